package boreledger.station.results;

import boreledger.calc.oversize.CylinderAdvice;
import boreledger.calc.oversize.EngineAdvice;
import boreledger.calc.oversize.HoningBar;
import boreledger.calc.oversize.HoningLimits;
import boreledger.calc.oversize.Oversizes;
import boreledger.calc.oversize.WornCylinder;
import boreledger.station.job.Job;
import boreledger.station.job.Limits;
import boreledger.station.results.AdviceResult.CylinderAdviceResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Advises to hone or to bore, once every cylinder was read. */
final class Advising {
  private Advising() {}

  /** The advice; null as long as a position of any cylinder lacks its reading. */
  static AdviceResult of(Job job, List<CylinderBore> bores) {
    List<WornCylinder> cylinders = new ArrayList<>();
    for (CylinderBore bore : bores) {
      bore.complete()
          .map(profile -> WornCylinder.of(bore.cylinder(), profile, bore.pistonMm()))
          .ifPresent(cylinders::add);
    }
    if (cylinders.size() < bores.size()) {
      return null;
    }
    Limits limits = job.limits();
    double allowanceMm = limits.honingAllowanceMm() == null ? 0 : limits.honingAllowanceMm();
    return result(
        EngineAdvice.of(
            cylinders,
            new Oversizes(job.engine().nominalBoreMm(), limits.oversizesMm(), allowanceMm),
            new HoningLimits(
                limits.boreMinMm(),
                limits.boreMaxMm(),
                limits.wearLimitMm(),
                limits.clearanceMinMm(),
                limits.clearanceMaxMm())));
  }

  private static AdviceResult result(EngineAdvice advice) {
    return new AdviceResult(
        advice.cure().word(),
        advice.oversizeMm(),
        advice.oversizeOnOriginalCentreMm(),
        advice.largestListed(),
        advice.cylinders().stream().map(Advising::result).toList());
  }

  private static CylinderAdviceResult result(CylinderAdvice advice) {
    return new CylinderAdviceResult(
        advice.cylinder().cylinder(),
        advice.oversizeMm(),
        advice.oversizeOnOriginalCentreMm(),
        advice.finishedMm(),
        advice.clearanceMm(),
        advice.honing().bars().stream().map(Advising::words).toList());
  }

  private static String words(HoningBar bar) {
    String pattern =
        switch (bar.why()) {
          case ABOVE_WEAR_LIMIT -> "largest diameter %.4f mm, wear limit %.4f mm";
          case TOO_MUCH_STOCK -> "%.4f mm would have to come off, the hone takes %.4f mm";
          case ABOVE_LARGEST_BORE -> "honed to %.4f mm, largest bore %.4f mm";
          case TOO_MUCH_CLEARANCE -> "piston clearance %.4f mm when honed, at most %.4f mm";
        };
    return String.format(Locale.ROOT, pattern, bar.valueMm(), bar.limitMm());
  }
}
