package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SignTrackTest {

  @Test
  void aSampledSineGetsItsSignsBack() {
    double[] tS = IntStream.range(0, 60).mapToDouble(i -> 0.1 * i + 0.02 * Math.sin(i)).toArray();
    double[] sine = IntStream.range(0, 60).mapToDouble(i -> Math.sin(4 * tS[i] + 1)).toArray();
    double[] root = IntStream.range(0, 60).mapToDouble(i -> Math.abs(sine[i])).toArray();
    double[] signed = SignTrack.signed(tS, root);
    double same = Math.signum(signed[0] * sine[0]);
    assertArrayEquals(sine, IntStream.range(0, 60).mapToDouble(i -> same * signed[i]).toArray(), 0);
  }

  /** Every one of the sign patterns is tried by brute force. */
  @Test
  void noOtherSignPatternIsSmoother() {
    Random random = new Random(8);
    for (int trial = 0; trial < 50; trial++) {
      int n = 4 + trial % 8;
      double[] tS = new double[n];
      for (int i = 1; i < n; i++) {
        tS[i] = tS[i - 1] + 0.05 + 0.1 * random.nextDouble();
      }
      double[] root = random.doubles(n, 0, 1).toArray();
      double least = Double.POSITIVE_INFINITY;
      for (int pattern = 0; pattern < 1 << n; pattern++) {
        double[] tried = root.clone();
        for (int i = 0; i < n; i++) {
          tried[i] *= (pattern >> i & 1) == 0 ? 1 : -1;
        }
        least = Math.min(least, roughness(tS, tried));
      }
      double[] signed = SignTrack.signed(tS, root);
      assertEquals(least, roughness(tS, signed), 1e-12, "trial " + trial);
      for (int i = 0; i < n; i++) {
        assertEquals(root[i], Math.abs(signed[i]), 0);
      }
    }
  }

  /** Divided differences scaled so that their taps' sizes add up to eight. */
  private static double roughness(double[] tS, double[] x) {
    double sum = 0;
    for (int i = 0; i + 3 < x.length; i++) {
      double difference = 0;
      double size = 0;
      for (int a = i; a < i + 4; a++) {
        double product = 1;
        for (int b = i; b < i + 4; b++) {
          product *= a == b ? 1 : tS[a] - tS[b];
        }
        difference += x[a] / product;
        size += Math.abs(1 / product);
      }
      sum += Math.abs(8 * difference / size);
    }
    return sum;
  }
}
