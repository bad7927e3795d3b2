package boreledger.calc.rock;

import java.util.Random;

/** Ways in which a hand may tilt a gauge to and fro, from very smooth to jerky; invented here. */
enum Hand {
  /** A sine whose amplitude and period wander without a kink. */
  WANDERING {
    @Override
    double[] tiltDeg(double[] tS, Random random) {
      double[] amplitude = drawn(random, MIN_DEG, MAX_DEG);
      double[] period = drawn(random, MIN_S, MAX_S);
      double phase = between(random, 0, 2 * Math.PI);
      double[] tilt = new double[tS.length];
      double now = 0;
      for (int i = 0; i < tS.length; i++) {
        for (; now < tS[i]; now += STEP_S) {
          phase += 2 * Math.PI / blended(period, now) * STEP_S;
        }
        double late = (now - tS[i]) * 2 * Math.PI / blended(period, now);
        tilt[i] = blended(amplitude, tS[i]) * Math.sin(phase - late);
      }
      return tilt;
    }
  },
  /** From turn to turn with the least jerk, each swing of its own width and time. */
  REACHING {
    @Override
    double[] tiltDeg(double[] tS, Random random) {
      return swings(tS, random, 0, Hand::leastJerk);
    }
  },
  /** The same, with a rest at some of the turns. */
  RESTING {
    @Override
    double[] tiltDeg(double[] tS, Random random) {
      return swings(tS, random, 0.15, Hand::leastJerk);
    }
  },
  /** Half a cosine from turn to turn: the acceleration jumps at every turn. */
  HALF_COSINES {
    @Override
    double[] tiltDeg(double[] tS, Random random) {
      return swings(tS, random, 0, x -> (1 - Math.cos(Math.PI * x)) / 2);
    }
  },
  /** Three sines that share no period. */
  BEATING {
    @Override
    double[] tiltDeg(double[] tS, Random random) {
      double main = 1 / between(random, MIN_S, MAX_S);
      double[] hertz = {main, main * between(random, 1.3, 1.7), main * between(random, 0.2, 0.6)};
      double[] part = {1, 0.2, 0.15};
      double amplitude = between(random, MIN_DEG, MAX_DEG);
      double[] tilt = new double[tS.length];
      for (int k = 0; k < hertz.length; k++) {
        double phase = between(random, 0, 2 * Math.PI);
        for (int i = 0; i < tS.length; i++) {
          tilt[i] += amplitude * part[k] * Math.sin(2 * Math.PI * hertz[k] * tS[i] + phase);
        }
      }
      return tilt;
    }
  },
  /** A new sine every turn: the speed jumps in the very moment the gauge passes through square. */
  STUTTERING {
    @Override
    double[] tiltDeg(double[] tS, Random random) {
      double[] tilt = new double[tS.length];
      double start = -between(random, 0, MAX_S);
      double period = between(random, MIN_S, MAX_S);
      double amplitude = between(random, MIN_DEG, MAX_DEG);
      for (int i = 0; i < tS.length; i++) {
        while (tS[i] > start + period) {
          start += period;
          period = between(random, MIN_S, MAX_S);
          amplitude = between(random, MIN_DEG, MAX_DEG);
        }
        tilt[i] = amplitude * Math.sin(2 * Math.PI * (tS[i] - start) / period);
      }
      return tilt;
    }
  };

  private static final double MIN_DEG = 4;
  private static final double MAX_DEG = 8;
  private static final double MIN_S = 1.2;
  private static final double MAX_S = 2.0;
  private static final double STEP_S = 0.001;
  private static final double WANDER_S = 1.5;

  /** Tilt in degrees at ascending times from 0 to less than half a minute. */
  abstract double[] tiltDeg(double[] tS, Random random);

  static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private interface Course {
    double at(double part);
  }

  private static double leastJerk(double x) {
    return x * x * x * (x * (6 * x - 15) + 10);
  }

  private static double[] drawn(Random random, double low, double high) {
    return random.doubles(24, low, high).toArray();
  }

  private static double blended(double[] value, double tS) {
    int k = (int) (tS / WANDER_S);
    return value[k] + (value[k + 1] - value[k]) * leastJerk(tS / WANDER_S - k);
  }

  private static double[] swings(double[] tS, Random random, double restChance, Course course) {
    double[] tilt = new double[tS.length];
    double start = -between(random, 0, 1);
    double from = -between(random, MIN_DEG, MAX_DEG);
    double to = between(random, MIN_DEG, MAX_DEG);
    double swing = between(random, MIN_S, MAX_S) / 2;
    double rest = 0;
    for (int i = 0; i < tS.length; i++) {
      while (tS[i] > start + swing + rest) {
        start += swing + rest;
        from = to;
        to = -Math.signum(to) * between(random, MIN_DEG, MAX_DEG);
        swing = between(random, MIN_S, MAX_S) / 2;
        rest = random.nextDouble() < restChance ? between(random, 0.1, 0.6) : 0;
      }
      tilt[i] = from + (to - from) * course.at(Math.min(1, (tS[i] - start) / swing));
    }
    return tilt;
  }
}
