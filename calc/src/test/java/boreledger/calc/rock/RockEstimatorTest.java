package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The figures hold for simulated records, whose truth is known by construction. */
class RockEstimatorTest {
  private static final int RECORDS = 100;

  @Test
  void tenSamplesPerSecondAreWithinAMicrometre() {
    assertTrue(errorsMm(10).percentile95Mm() <= 0.0010);
  }

  private static Errors errorsMm(double rate) {
    List<Double> own = new ArrayList<>();
    for (int k = 0; k < RECORDS; k++) {
      Hand hand = Hand.values()[k % Hand.values().length];
      Ends ends = Ends.values()[k / Hand.values().length % Ends.values().length];
      RockingRecord record = RockingRecord.of(100 + k, hand, ends, rate);
      RockEstimate estimate = RockEstimator.estimate(record.samples(), 0.001, 4);
      RockEstimate.Found found =
          assertInstanceOf(RockEstimate.Found.class, estimate, hand + " seed " + (100 + k));
      own.add(Math.abs(found.valueMm() - record.truthMm()));
    }
    return new Errors(own.stream().mapToDouble(Double::doubleValue).sorted().toArray());
  }

  private record Errors(double[] sortedMm) {
    double percentile95Mm() {
      return sortedMm[(int) Math.ceil(0.95 * sortedMm.length) - 1];
    }
  }

  @Test
  void noSamplesAreNotEnough() {
    assertEquals(
        new RockEstimate.NotEnough(0, "0 samples, at least 12 needed"),
        RockEstimator.estimate(List.of(), 0.001, 4));
  }

  @Test
  void constantValuesAreNotEnough() {
    double[] values = new double[120];
    Arrays.fill(values, 0.5);
    List<RockSample> samples = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      samples.add(new RockSample(0.1 * i, values[i]));
    }
    assertInstanceOf(RockEstimate.NotEnough.class, RockEstimator.estimate(samples, 0.001, 4));
  }
}
