package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two hundred engines whose truth is known: sixteen through processes, the rest through whatever
 * {@link Launcher#quick} gives. A failure names the seed.
 */
class RandomJobsIT {
  @TempDir Path folder;

  @Test
  void sixteenEnginesThroughProcessesGiveTheModelsFigures() throws Exception {
    checkAll(Launcher.process(), LongStream.range(7000, 7016));
  }

  @Test
  void aHundredAndEightyFourMoreGiveTheModelsFigures() throws Exception {
    checkAll(Launcher.quick(), LongStream.range(7100, 7284));
  }

  private void checkAll(Launcher program, LongStream seeds) throws Exception {
    List<Callable<Integer>> jobs = new ArrayList<>();
    seeds.forEach(seed -> jobs.add(() -> checkOne(program, seed)));
    ExecutorService hands = Executors.newFixedThreadPool(program.parallel());
    try {
      int figures = 0;
      for (Future<Integer> job : hands.invokeAll(jobs)) {
        figures += job.get();
      }
      assertTrue(figures > 100 * jobs.size() / 2, figures + " figures for " + jobs.size());
    } finally {
      hands.shutdownNow();
    }
  }

  private int checkOne(Launcher program, long seed) throws IOException {
    Path own = Files.createDirectory(folder.resolve("seed" + seed));
    RandomJob job = new RandomJob(seed, new Bundle(own));
    Outcome outcome = program.run(job.replay()).noTrace();
    assertTrue(outcome.exit() == 0 || outcome.exit() == 1, () -> "seed " + seed + ": " + outcome);
    int compared = job.check(outcome.json());
    assertEquals(job.figures(), compared, "figures compared for seed " + seed);
    return compared;
  }
}
