package boreledger.calc.rock;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * How many simulated readings come out, how far off they are, and how often twice the stated
 * uncertainty covers the error; hands and ends take turns.
 *
 * @param rate samples per second
 * @param readings how many records were simulated
 * @param outcomes those that gave a value
 */
record RockFigures(double rate, int readings, List<Outcome> outcomes) {

  record Outcome(double errorMm, double standardUncertaintyMm, double runningMinimumErrorMm) {
    double ratio() {
      return errorMm / standardUncertaintyMm;
    }
  }

  static RockFigures of(double rate, int readings, long firstSeed) {
    List<Outcome> outcomes =
        IntStream.range(0, readings)
            .parallel()
            .mapToObj(k -> outcome(record(rate, firstSeed + k)))
            .filter(Objects::nonNull)
            .toList();
    return new RockFigures(rate, readings, outcomes);
  }

  static RockingRecord record(double rate, long seed) {
    Hand[] hands = Hand.values();
    Ends[] ends = Ends.values();
    Hand hand = hands[(int) (seed % hands.length)];
    return RockingRecord.of(seed, hand, ends[(int) (seed / hands.length % ends.length)], rate);
  }

  private static Outcome outcome(RockingRecord record) {
    return RockEstimator.estimate(record.samples(), 0.001, 4) instanceof RockEstimate.Found found
        ? new Outcome(
            Math.abs(found.valueMm() - record.truthMm()),
            found.standardUncertaintyMm(),
            record.runningMinimumErrorMm())
        : null;
  }

  double error95Mm() {
    return percentile95(outcomes.stream().mapToDouble(Outcome::errorMm).toArray());
  }

  double runningMinimumError95Mm() {
    return percentile95(outcomes.stream().mapToDouble(Outcome::runningMinimumErrorMm).toArray());
  }

  private static double percentile95(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.ceil(0.95 * sorted.length) - 1];
  }

  double coveredPart() {
    return (double) outcomes.stream().filter(o -> o.ratio() <= 2).count() / outcomes.size();
  }

  double worstRatio() {
    return outcomes.stream().mapToDouble(Outcome::ratio).max().orElseThrow();
  }

  @Override
  public String toString() {
    return String.format(
        "%.0f/s: %d of %d found, 95 %% within %.2f um, covered %.1f %%, worst error/u %.1f,"
            + " running minimum 95 %% within %.1f um",
        rate,
        outcomes.size(),
        readings,
        1000 * error95Mm(),
        100 * coveredPart(),
        worstRatio(),
        1000 * runningMinimumError95Mm());
  }
}
