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
import boreledger.station.wording.Part.Length;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;

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
        advice.honing().bars().stream().map(Advising::reason).toList());
  }

  private static Statement reason(HoningBar bar) {
    Phrase why =
        switch (bar.why()) {
          case ABOVE_WEAR_LIMIT -> Phrase.WORN_BEYOND_LIMIT;
          case TOO_MUCH_STOCK -> Phrase.TOO_MUCH_STOCK;
          case ABOVE_LARGEST_BORE -> Phrase.HONED_TOO_LARGE;
          case TOO_MUCH_CLEARANCE -> Phrase.HONED_TOO_LOOSE;
        };
    return why.of(new Length(bar.valueMm()), new Length(bar.limitMm()));
  }
}
