package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A gauge in an invented hand: it rests on its stop in free air, goes into a bore, is rocked there
 * and taken out. Tilted by θ it reads D/cos θ, as a gauge with sharp anvils does by geometry.
 */
final class RockingHand {
  private final List<Sample> samples = new ArrayList<>();
  private final Random random;
  private final double diameterMm;
  private final double everyS;
  private double noiseMm = 0.0005;
  private double nowS;
  private double levelMm;

  RockingHand(long seed, double diameterMm, double perSecond) {
    random = new Random(seed);
    this.diameterMm = diameterMm;
    everyS = 1 / perSecond;
  }

  RockingHand noise(double standardDeviationMm) {
    noiseMm = standardDeviationMm;
    return this;
  }

  /** Rests at a value. */
  RockingHand restAt(double valueMm, double forS) {
    for (double sinceS = 0; sinceS < forS; sinceS += everyS) {
      sample(valueMm);
    }
    return this;
  }

  /** Moves to a value, some three samples on the way. */
  RockingHand goTo(double valueMm) {
    double fromMm = levelMm;
    for (int i = 1; i <= 3; i++) {
      sample(fromMm + (valueMm - fromMm) * i / 4);
    }
    return this;
  }

  /** Rocks through square twice a period, from a tilt to the same tilt on the other side. */
  RockingHand rock(double squareMm, double tiltDeg, double periodS, int periods) {
    double startS = random.nextDouble() * periodS;
    for (double sinceS = 0; sinceS < periods * periodS; sinceS += everyS) {
      double angle = Math.toRadians(tiltDeg) * Math.sin(2 * Math.PI * (startS + sinceS) / periodS);
      sample(squareMm + diameterMm * (1 / Math.cos(angle) - 1));
    }
    return this;
  }

  RockingHand silence(double forS) {
    nowS += forS;
    return this;
  }

  /** Sends one value. */
  RockingHand wild(double valueMm) {
    return restAt(valueMm, everyS / 2);
  }

  private void sample(double valueMm) {
    double noisyMm = valueMm + noiseMm * random.nextGaussian();
    samples.add(Samples.at(nowS, Math.round(noisyMm * 1000) / 1000.0));
    nowS += everyS;
    levelMm = valueMm;
  }

  List<Sample> samples() {
    return samples;
  }
}
