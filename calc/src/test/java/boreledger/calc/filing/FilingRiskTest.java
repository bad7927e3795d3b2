package boreledger.calc.filing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Made-up filing: how often the true gap passes the limit when the advised turns are filed. */
class FilingRiskTest {
  private static final int SEEDS = 5000;
  private static final FilingGoal GOAL = FilingGoal.of(0.50, null);

  /**
   * A ring under the file.
   *
   * @param leastTurns of a pass; it has up to five more
   * @param rateSpread how far the rate of a pass strays, as a share of the mean rate
   * @param turnSpread how far a single turn strays from the pass's rate, as a share of it
   */
  private record Bench(
      double startMm,
      int leastTurns,
      double perTurnMm,
      double readingMm,
      double rateSpread,
      double turnSpread,
      int passes) {

    /** The advice and where it led; null when there was none to file by. */
    Boolean passesLimit(Random random) {
      double trueMm = startMm;
      double readMm = read(trueMm, random);
      List<FilingPass> done = new ArrayList<>();
      for (int i = 0; i < passes; i++) {
        int turns = leastTurns + random.nextInt(6);
        trueMm += filed(turns, random);
        double afterMm = read(trueMm, random);
        done.add(new FilingPass(turns, readMm, afterMm));
        readMm = afterMm;
      }
      Estimate gap =
          new Estimate(readMm, Budget.of(Component.typeB("reading of the gap", readingMm)));
      return new Filing(gap, readingMm, done, GOAL).next() instanceof FilingAdvice.NextPass next
          ? trueMm + filed(next.turns(), random) > GOAL.limitMm()
          : null;
    }

    private double read(double trueMm, Random random) {
      return trueMm + readingMm * random.nextGaussian();
    }

    private double filed(int turns, Random random) {
      double byPass = 1 + rateSpread * random.nextGaussian();
      double byTurn = turnSpread * random.nextGaussian() / Math.sqrt(turns);
      return perTurnMm * turns * (byPass + byTurn);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.25, 3, 0.005, 0.004, 0.15, 0, 3",
    "0.25, 3, 0.005, 0.004, 0.15, 0, 5",
    "0.25, 3, 0.005, 0.0064, 0.1, 0, 3",
    "0.25, 3, 0.005, 0.001, 0.2, 0, 3",
    "0.25, 3, 0.005, 0.001, 0.2, 0, 4",
    "0.25, 3, 0.003, 0.002, 0.3, 0, 6",
    "0.25, 3, 0.005, 0.004, 0, 0.3, 3",
    "0.25, 3, 0.005, 0.001, 0, 0.5, 5",
    "0.25, 3, 0.005, 0.002, 0.1, 0.3, 4",
    "0.25, 3, 0.005, 0.004, 0, 0, 3",
    "0.25, 3, 0.005, 0.004, 0, 0, 7",
    "0.20, 10, 0.005, 0.002, 0.1, 0, 4",
    "0.20, 10, 0.005, 0.002, 0, 0.3, 4",
    "0.40, 1, 0.005, 0.001, 0.1, 0, 3"
  })
  void advisedPassSeldomPassesTheLimit(
      double startMm,
      int leastTurns,
      double perTurnMm,
      double readingMm,
      double rateSpread,
      double turnSpread,
      int passes) {
    Bench bench =
        new Bench(startMm, leastTurns, perTurnMm, readingMm, rateSpread, turnSpread, passes);
    int advised = 0;
    int passed = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Boolean over = bench.passesLimit(new Random(seed));
      advised += over == null ? 0 : 1;
      passed += over != null && over ? 1 : 0;
    }
    assertTrue(advised > 0.5 * SEEDS, bench + ": advice for only " + advised);
    assertTrue(passed <= 0.015 * advised, bench + ": " + passed + " of " + advised + " passed");
  }
}
