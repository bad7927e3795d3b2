package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A ledger that is missing, is something else, or holds several jobs. */
class LedgerFilesIT {
  private static final String JOB = "pumphouse-three.job.toml";
  private static final String BORE = "bore-press.capture.jsonl";

  private final Launcher program = Launcher.quick();

  @TempDir Path folder;
  private Bundle bundle;

  @BeforeEach
  void fillTheFolder() {
    bundle = new Bundle(folder).withSamples(JOB, "signed-decimal.gauge.toml", BORE);
  }

  @ParameterizedTest
  @ValueSource(strings = "results")
  void aCommandThatOnlyReadsRefusesAMissingLedgerAndMakesNone(String command) {
    TreeSet<String> before = bundle.names();
    program.run(command, "--ledger", bundle.ledger()).refused(4);
    assertEquals(before, bundle.names());
  }

  @Test
  void aReplayIntoAFolderThatIsNotThereIsRefused() {
    TreeSet<String> before = bundle.names();
    program
        .run(
            "replay",
            "--job",
            bundle.path(JOB),
            "--capture",
            bundle.path(BORE),
            "--ledger",
            folder.resolve("nowhere/bench.ledger").toString())
        .refused(4);
    assertEquals(before, bundle.names());
  }

  @Test
  void aFileThatIsNoLedgerIsLeftAlone() {
    String letter = "Dear reader, this is a letter and no ledger.\n".repeat(30);
    bundle.write("bench.ledger", letter);
    TreeSet<String> before = bundle.names();
    program.run(bundle.replay(JOB, List.of(BORE))).refused(4);
    program.run("results", "--ledger", bundle.ledger()).refused(4);
    assertEquals(letter, Bundle.read(folder.resolve("bench.ledger")));
    assertEquals(before, bundle.names());
  }

  @Test
  void severalJobsInOneLedgerAreAskedForByName() {
    program.run(bundle.replay(JOB, List.of(BORE))).ended(1);
    bundle.edit(JOB, "name = \"Pumphouse three\"", "name = \"Pumphouse four\"");
    program.run(bundle.replay(JOB, List.of(BORE))).ended(1);
    String message = program.run("results", "--json", "--ledger", bundle.ledger()).refused(2);
    assertTrue(message.contains("--job"), message);
    for (String name : List.of("Pumphouse three", "Pumphouse four")) {
      Outcome outcome =
          program.run("results", "--json", "--ledger", bundle.ledger(), "--job", name).ended(1);
      assertEquals(name, outcome.json().path("job").asText());
    }
    program
        .run("results", "--json", "--ledger", bundle.ledger(), "--job", "Pumphouse nine")
        .refused(2);
  }
}
