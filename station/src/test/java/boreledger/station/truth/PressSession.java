package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A sitting with a gauge whose button is pressed once per position: opening check on the setting
 * ring, the plan, closing check.
 */
public record PressSession(Engine engine, Drift drift, double noiseMm, List<Press> presses) {

  /** One press of the button: its reading and the text on the line. */
  public record Press(BoreReading reading, String frame) {}

  /** Gauges the whole plan. */
  public static PressSession gauge(
      Engine engine, Drift drift, double noiseMm, Wire wire, Noise noise) {
    List<Position> places = new ArrayList<>();
    places.add(null);
    places.addAll(engine.plan());
    places.add(null);
    List<Press> presses = new ArrayList<>();
    double paceS = drift.lengthS() / places.size();
    for (int i = 0; i < places.size(); i++) {
      BigDecimal tS = CaptureText.seconds(paceS * (i + noise.between(0.1, 0.9)));
      double shown = shown(engine, places.get(i), drift.atMm(tS.doubleValue()));
      Wire.Sent sent = wire.send(shown + noise.normal(noiseMm));
      presses.add(new Press(new BoreReading(tS, sent.meansMm(), places.get(i)), sent.frame()));
    }
    return new PressSession(engine, drift, noiseMm, List.copyOf(presses));
  }

  /** What the gauge sent, in order. */
  public List<BoreReading> readings() {
    return presses.stream().map(Press::reading).toList();
  }

  private static double shown(Engine engine, Position place, double zeroMm) {
    return place == null
        ? zeroMm
        : engine.bench().deviationMm(engine.trueDiameterMm(place), zeroMm);
  }
}
