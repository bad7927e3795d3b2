package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A sitting in which one kind of ring is pushed down every bore and its end gap gauged. */
public record GapSession(RingKind ring, List<Press> presses) {

  /** One press of the button. */
  public record Press(GapReading reading, String frame) {}

  /**
   * Gauges the ring in every cylinder at all its depths.
   *
   * @param firstGapsMm per cylinder, the true gap at 20 °C at the ring's shallowest gauged depth
   */
  public static GapSession gauge(
      Engine engine,
      RingKind ring,
      List<Double> firstGapsMm,
      double noiseMm,
      Wire wire,
      Noise noise) {
    BoreTruth bores = BoreTruth.ofEngine(engine);
    List<Press> presses = new ArrayList<>();
    double tS = 0;
    for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
      GapTruth truth = new GapTruth(engine, bores, ring, cylinder);
      double shallowestMm = ring.gaugingOrderMm().get(0);
      double lengthMm = bores.perimeterMm(cylinder, shallowestMm) - firstGapsMm.get(cylinder - 1);
      for (double depthMm : ring.gaugingOrderMm()) {
        tS += noise.between(9.0, 21.0);
        Wire.Sent sent = wire.send(truth.gapAtBenchMm(lengthMm, depthMm) + noise.normal(noiseMm));
        BigDecimal when = CaptureText.seconds(tS);
        presses.add(
            new Press(new GapReading(when, sent.meansMm(), cylinder, depthMm), sent.frame()));
      }
    }
    return new GapSession(ring, List.copyOf(presses));
  }

  /** The readings of one cylinder, in order. */
  public List<GapReading> readings(int cylinder) {
    return presses.stream().map(Press::reading).filter(r -> r.cylinder() == cylinder).toList();
  }
}
