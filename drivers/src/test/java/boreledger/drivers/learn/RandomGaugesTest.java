package boreledger.drivers.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RandomGaugesTest {
  private static final int GAUGES = 150;
  private static final long FIRST_SEED = 1000;

  @Test
  void noneIsLearnedWrongly() throws FileProblem {
    int certain = 0;
    List<String> wrong = new ArrayList<>();
    List<String> unsure = new ArrayList<>();
    for (long seed = FIRST_SEED; seed < FIRST_SEED + GAUGES; seed++) {
      InventedGauge gauge = RandomGauge.of(seed);
      Learned learned = new Session(gauge, seed).play();
      if (!learned.certain()) {
        unsure.add(
            gauge
                + ": "
                + learned.why()
                + learned.candidates().stream().map(Candidate::words).toList());
        continue;
      }
      certain++;
      String profile = learned.candidates().get(0).profile();
      String problem = FreshFrames.wrong(gauge, profile, seed + 1);
      if (!problem.isEmpty()) {
        wrong.add(gauge + ": " + problem + "\n" + profile);
      }
    }
    String seen = certain + " certain, unsure:\n" + String.join("\n", unsure);
    assertEquals(List.of(), wrong, seen);
    assertTrue(2 * certain > GAUGES, seen);
  }
}
