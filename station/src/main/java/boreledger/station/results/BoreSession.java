package boreledger.station.results;

import boreledger.calc.bore.BoreGauging;
import boreledger.calc.bore.BoreReading;
import boreledger.calc.bore.Diameter;
import boreledger.calc.bore.GaugeAccuracy;
import boreledger.calc.bore.Repeatability;
import boreledger.calc.bore.ThermalUncertainty;
import boreledger.calc.bore.ZeroCheck;
import boreledger.calc.bore.ZeroLine;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.MaxErrorPart;
import boreledger.station.job.GaugingOrder;
import boreledger.station.job.InputUncertainty;
import boreledger.station.job.Job;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession;
import boreledger.station.wording.Part.Length;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A bore session's readings as diameters. */
final class BoreSession {
  private static final double REFERENCE_C = 20;

  private final GaugingOrder plan;
  private final Job job;
  private final StoredSession session;
  private final GaugeProfile gauge;
  private final ZeroLine zero;

  private BoreSession(
      GaugingOrder plan, Job job, StoredSession session, GaugeProfile gauge, ZeroLine zero) {
    this.plan = plan;
    this.job = job;
    this.session = session;
    this.gauge = gauge;
    this.zero = zero;
  }

  /**
   * The session's readings; empty as long as the setting ring has none.
   *
   * @param plan the positions that are asked for
   * @param job the job that the session was opened with: its setting and materials hold
   */
  static Optional<BoreSession> of(
      GaugingOrder plan, Job job, StoredSession session, GaugeProfile gauge) {
    List<ZeroCheck> checks = zeroChecks(new ZeroChecks(session, job.setting()), session);
    return checks.isEmpty()
        ? Optional.empty()
        : Optional.of(new BoreSession(plan, job, session, gauge, new ZeroLine(checks)));
  }

  static GaugeAccuracy accuracy(GaugeProfile gauge) {
    return new GaugeAccuracy(
        gauge.resolutionMm(),
        gauge.maxErrorMm(),
        gauge.maxErrorIncludes().contains(MaxErrorPart.RESOLUTION),
        gauge.maxErrorIncludes().contains(MaxErrorPart.REPEATABILITY));
  }

  static Repeatability repeatability(GaugeProfile gauge) {
    return gauge.repeatabilityMm() == null ? null : Repeatability.stated(gauge.repeatabilityMm());
  }

  static double orReference(Double tempC) {
    return tempC == null ? REFERENCE_C : tempC;
  }

  /** The diameters read in a cylinder, from the deck down and in the plan's order of axes. */
  List<Diameter> diameters(int cylinder) {
    List<Diameter> diameters = new ArrayList<>();
    for (double depthMm : plan.depthsMm()) {
      for (String axis : plan.axes()) {
        session
            .at(new Position.Bore(cylinder, depthMm, axis))
            .map(stored -> diameter(depthMm, axis, stored.reading()))
            .ifPresent(diameters::add);
      }
    }
    return diameters;
  }

  /** Whether the zero moved by more than the gauge may err. */
  boolean drifted() {
    return driftMm() > gauge.maxErrorMm();
  }

  /** What a person should know about the session as a whole. */
  List<Statement> cautions() {
    List<Statement> cautions = new ArrayList<>();
    boolean temperatures =
        session.stints().stream()
            .allMatch(stint -> stint.blockTempC() != null && stint.settingTempC() != null);
    if (!temperatures) {
      cautions.add(Phrase.TEMPERATURE_NOT_TAKEN.of());
    }
    if (session.at(SettingCheck.CLOSING).isEmpty()) {
      cautions.add(Phrase.NO_CLOSING_CHECK.of());
    }
    if (drifted()) {
      cautions.add(Phrase.ZERO_DRIFTED.of(new Length(driftMm()), new Length(gauge.maxErrorMm())));
    }
    return cautions;
  }

  private double driftMm() {
    Double driftMm = new ZeroChecks(session, job.setting()).driftMm();
    return driftMm == null ? 0 : driftMm;
  }

  private Diameter diameter(double depthMm, String axis, ReadingTaken reading) {
    BoreGauging gauging =
        new BoreGauging(
            ZeroChecks.standard(job.setting()),
            zero,
            accuracy(gauge),
            repeatability(gauge),
            orReference(session.stintAt(reading.tS()).blockTempC()),
            job.engine().bore().ctePerK(),
            thermal(job.uncertainty()));
    return gauging.diameter(
        new BoreReading(
            depthMm, axis, reading.tS(), reading.valueMm(), reading.standardUncertaintyMm()));
  }

  /** The checks in order of time; those of one moment count as one, with their mean. */
  private static List<ZeroCheck> zeroChecks(ZeroChecks taken, StoredSession session) {
    Map<Double, List<ReadingTaken>> byTime =
        taken.list().stream()
            .collect(Collectors.groupingBy(ReadingTaken::tS, TreeMap::new, Collectors.toList()));
    List<ZeroCheck> checks = new ArrayList<>();
    byTime.forEach(
        (tS, together) ->
            checks.add(
                new ZeroCheck(
                    tS,
                    together.stream().collect(Collectors.averagingDouble(ReadingTaken::valueMm)),
                    orReference(session.stintAt(tS).settingTempC()),
                    scatterMm(together))));
    return checks;
  }

  /** The standard uncertainty of a mean, from each one's own; null unless all know theirs. */
  private static Double scatterMm(List<ReadingTaken> together) {
    if (together.stream().anyMatch(check -> check.standardUncertaintyMm() == null)) {
      return null;
    }
    return Math.sqrt(
            together.stream()
                .mapToDouble(check -> Math.pow(check.standardUncertaintyMm(), 2))
                .sum())
        / together.size();
  }

  static ThermalUncertainty thermal(InputUncertainty uncertainty) {
    return new ThermalUncertainty(
        uncertainty.temperatureK(),
        uncertainty.ctePerK(),
        uncertainty.gaugeTemperatureK(),
        uncertainty.gaugeCtePerK());
  }
}
