package boreledger.drivers.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * How the hand tilts the gauge while it rocks: to and fro about a middle that is not quite square,
 * each swing with its own width and time, now and then with a rest at its end, during which the
 * tilt sinks a little, and always with a little tremor.
 */
final class Swings {
  private static final double TREMOR_DEG = 0.06;
  private static final double TREMOR_HZ = 7;
  private static final double REST_CHANCE = 0.15;

  private final List<Swing> swings = new ArrayList<>();
  private final double middleDeg;
  private final double tremorTurns;

  private record Swing(double fromS, double toS, double fromDeg, double toDeg) {
    double tiltDeg(double tS) {
      double part = toS == fromS ? 1 : (tS - fromS) / (toS - fromS);
      return fromDeg + (toDeg - fromDeg) * (1 - Math.cos(Math.PI * part)) / 2;
    }
  }

  /** Six to ten swings. */
  Swings(Random random) {
    middleDeg = -1 + 2 * random.nextDouble();
    tremorTurns = random.nextDouble();
    double widthDeg = 4.5 + 3 * random.nextDouble();
    double swingS = 0.6 + 0.35 * random.nextDouble();
    double side = random.nextBoolean() ? 1 : -1;
    double tS = 0;
    double tiltDeg = side * widthDeg;
    int count = 6 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      if (random.nextDouble() < REST_CHANCE) {
        double restS = 0.2 + 0.4 * random.nextDouble();
        double sunkDeg = tiltDeg * (0.9 + 0.06 * random.nextDouble());
        swings.add(new Swing(tS, tS + restS, tiltDeg, sunkDeg));
        tS += restS;
        tiltDeg = sunkDeg;
      }
      side = -side;
      double nextDeg = side * widthDeg * (1 + 0.1 * random.nextGaussian());
      double lastsS = swingS * (1 + 0.3 * (random.nextDouble() - 0.5));
      swings.add(new Swing(tS, tS + lastsS, tiltDeg, nextDeg));
      tS += lastsS;
      tiltDeg = nextDeg;
    }
  }

  /** How long they last, in seconds. */
  double lengthS() {
    return swings.get(swings.size() - 1).toS();
  }

  /** The tilt from square so many seconds after the start. */
  double tiltDeg(double tS) {
    Swing now = swings.get(swings.size() - 1);
    for (int i = swings.size() - 1; i >= 0 && swings.get(i).toS() >= tS; i--) {
      now = swings.get(i);
    }
    double tremorDeg = TREMOR_DEG * Math.sin(2 * Math.PI * (TREMOR_HZ * tS + tremorTurns));
    return middleDeg + now.tiltDeg(Math.min(tS, lengthS())) + tremorDeg;
  }
}
