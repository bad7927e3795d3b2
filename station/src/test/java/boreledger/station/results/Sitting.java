package boreledger.station.results;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.job.Job;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A stored session, put together reading by reading. Readings without a time come 10 s apart. */
final class Sitting {
  private static final Instant STARTED = Instant.parse("2031-05-06T08:00:00Z");

  private final SmallJob job;
  private final Measure measure;
  private final String ring;
  private final List<StoredReading> readings = new ArrayList<>();
  private final List<SampleRefused> refused = new ArrayList<>();
  private GaugeProfile gauge;
  private Double settingTempC = 20.0;
  private Double blockTempC = 20.0;
  private double tS;

  private Sitting(SmallJob job, Measure measure, String ring, GaugeProfile gauge) {
    this.job = job;
    this.measure = measure;
    this.ring = ring;
    this.gauge = gauge;
  }

  /** A bore session with the gauge that reads deviations. */
  static Sitting ofBores(SmallJob job) {
    return new Sitting(job, Measure.BORE, null, SmallGauge.deviation().profile());
  }

  /** A gap session of the top ring. */
  static Sitting ofGaps(SmallJob job) {
    return ofGaps(job, "top");
  }

  /** A gap session of a ring. */
  static Sitting ofGaps(SmallJob job, String ring) {
    return new Sitting(job, Measure.GAP, ring, SmallGauge.size().profile());
  }

  /** Takes another gauge. */
  Sitting with(SmallGauge another) {
    gauge = another.profile();
    return this;
  }

  /** The temperatures of setting ring and block in degrees Celsius; null when not taken. */
  Sitting at(Double settingC, Double blockC) {
    settingTempC = settingC;
    blockTempC = blockC;
    return this;
  }

  Sitting opening(double valueMm) {
    return read(SettingCheck.OPENING, valueMm);
  }

  Sitting closing(double valueMm) {
    return read(SettingCheck.CLOSING, valueMm);
  }

  /** Cylinder 1. */
  Sitting bore(double depthMm, String axis, double valueMm) {
    return read(new Bore(1, depthMm, axis), valueMm);
  }

  /** Thrust and pin axis of cylinder 1 at a depth. */
  Sitting bores(double depthMm, double thrustMm, double pinMm) {
    return bore(depthMm, "thrust", thrustMm).bore(depthMm, "pin", pinMm);
  }

  /** Cylinder 1. */
  Sitting gap(double depthMm, double gapMm) {
    return read(new Gap(1, ring, depthMm), gapMm);
  }

  Sitting read(Position position, double valueMm) {
    return read(position, tS + 10, valueMm);
  }

  Sitting read(Position position, double atS, double valueMm, String... cautions) {
    return read(position, atS, valueMm, null, cautions);
  }

  Sitting read(Position position, double atS, double valueMm, Double u, String... cautions) {
    tS = atS;
    ReadingTaken taken =
        new ReadingTaken(
            2,
            position,
            atS,
            STARTED.plusMillis(Math.round(atS * 1000)),
            valueMm,
            u,
            "press",
            null,
            List.of(),
            List.of(cautions));
    readings.add(new StoredReading(readings.size() + 3, taken));
    return this;
  }

  Sitting refused(String why) {
    refused.add(new SampleRefused(2, tS, STARTED, "ff", null, why));
    return this;
  }

  /** The job that the session was opened with. */
  Job job() {
    return job.job();
  }

  GaugeProfile gauge() {
    return gauge;
  }

  /** The session as a ledger would tell it. */
  StoredSession stored(long id) {
    SessionOpened opened =
        new SessionOpened(
            job.job().name(),
            job.job().source().sha256(),
            gauge.source().sha256(),
            List.of(),
            measure,
            ring,
            STARTED,
            settingTempC,
            blockTempC,
            "a line",
            "0.0.0");
    return new StoredSession(
        id,
        opened,
        readings,
        refused,
        false,
        tS,
        STARTED,
        List.of(new StoredSession.Stint(0, settingTempC, blockTempC)),
        List.of(),
        false,
        List.of());
  }
}
