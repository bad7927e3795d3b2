package boreledger.drivers.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import boreledger.drivers.file.FileProblem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every invented gauge is learned from five values, and none wrongly. */
class GaugeLearnerCorpusTest {
  private static final long[] SEEDS = {11, 4242, 90210};

  static List<InventedGauge> unknowable() {
    return Corpus.unknowable();
  }

  @Test
  void allAreFoundAndNoneWrongly() throws FileProblem {
    for (long seed : SEEDS) {
      int certain = 0;
      List<String> unsure = new ArrayList<>();
      List<String> wrong = new ArrayList<>();
      for (InventedGauge gauge : Corpus.knowable()) {
        Session session = new Session(gauge, seed);
        Learned learned = session.play();
        if (!learned.certain()) {
          unsure.add(gauge + ": " + learned.why() + " " + words(learned));
          continue;
        }
        certain++;
        String problem = FreshFrames.wrong(gauge, learned.candidates().get(0).profile(), seed + 1);
        if (!problem.isEmpty()) {
          wrong.add(gauge + ": " + problem + "\n" + learned.candidates().get(0).profile());
        }
      }
      String seen = "seed " + seed + ", unsure:\n" + String.join("\n", unsure);
      assertEquals(List.of(), wrong, seen);
      assertEquals(Corpus.knowable().size(), certain, seen);
    }
  }

  private static List<String> words(Learned learned) {
    return learned.candidates().stream().map(Candidate::words).toList();
  }

  @ParameterizedTest
  @MethodSource("unknowable")
  void whatCannotBeKnownStaysUnsure(InventedGauge gauge) {
    for (long seed : SEEDS) {
      Learned learned = new Session(gauge, seed).play();
      assertFalse(learned.certain(), () -> "seed " + seed + ": " + words(learned));
    }
  }
}
