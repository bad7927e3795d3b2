package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import boreledger.station.session.SmallGauge;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "weigh|boreledger --help",
        "ports --loud|boreledger ports --help",
        "ports now|boreledger ports --help",
        "results|--ledger",
        "results --ledger|--ledger",
        "results --ledger a --ledger b|--ledger",
        "replay --job a --ledger b|--capture",
        "capture --measure bore --ledger d|--job",
        "capture --job a --gauge b --port c --ledger d --measure girth|bore, gap, ring-depth",
        "capture --job a --gauge b --port c --ledger d --measure gap --block-temp warm|--block-temp",
        "capture --job a --port c --ledger d --measure bore|--gauge",
        "capture --job a --gauge b --ledger d --measure bore|--port",
        "capture --job a --practice --port c --ledger d --measure bore|--practice",
        "capture --job a --gauge b --port c --seed 1 --ledger d --measure bore|--seed",
        "capture --job a --gauge b --port c --pace 2 --ledger d --measure bore|--pace",
        "capture --job a --practice --pace 0 --ledger d --measure bore|--pace",
        "capture --job a --gauge b --port c --also e --ledger d --measure bore|--also e",
        "capture --job a --gauge b --port c --also e@f:girth:g --ledger d --measure bore|WHAT",
        "capture --job a --practice --also e@f:gap:g --ledger d --measure bore|--also",
        "figure|boreledger figure --help",
        "figure weigh|boreledger figure --help",
        "gauge|boreledger gauge --help",
      })
  void aCallThatIsNotUnderstoodIsRefusedInOneLineThatNamesTheTrouble(String call, String named) {
    Ran refused = Ran.command((Object[]) call.split(" ")).refused(2);

    assertTrue(refused.err().contains(named), refused::toString);
  }

  @Test
  void aCallWithoutACommandAsksForOne() {
    assertTrue(Ran.command().refused(2).err().contains("which command?"));
  }

  @Test
  void aLedgerThatIsNotThereIsToldInOneLineAndNotMade() {
    Ran refused = Ran.command("results", "--ledger", bench.ledger()).refused(4);

    assertEquals(
        bench.ledger() + ": there is no such ledger; demo, bench, capture and replay make one",
        refused.err().strip());
    assertFalse(Files.exists(bench.ledger()));
  }

  @Test
  void aFileThatIsNoLedgerIsToldInOneLine() {
    Path file = bench.write("notes.txt", "twelve words of plain text which no program wrote\n");

    Ran.command("results", "--ledger", file).refused(4);
    Ran.command("replay", "--job", bench.job(), "--capture", bores(), "--ledger", file).refused(4);
  }

  @Test
  void aFolderIsNoLedger() {
    Ran.command("results", "--ledger", folder).refused(4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--job", "--capture"})
  void aFileThatIsNotThereIsNamedAndLeavesNoLedger(String option) {
    Path nowhere = folder.resolve("nowhere.toml");
    Object job = option.equals("--job") ? nowhere : bench.job();
    Object capture = option.equals("--capture") ? nowhere : bores();

    Ran refused =
        Ran.command("replay", "--job", job, "--capture", capture, "--ledger", bench.ledger())
            .refused(2);

    assertTrue(refused.err().startsWith(nowhere + ": "), refused::toString);
    assertFalse(Files.exists(bench.ledger()));
  }

  @Test
  void aMissingPortIsAFaultOfTheLineAndLeavesNoLedger() {
    Ran refused =
        Ran.command(
                "capture",
                "--job",
                bench.job(),
                "--gauge",
                bench.gauge(SmallGauge.deviation()),
                "--port",
                folder.resolve("no-port"),
                "--measure",
                "bore",
                "--ledger",
                bench.ledger())
            .refused(3);

    assertTrue(refused.err().contains("no-port"), refused::toString);
    assertFalse(Files.exists(bench.ledger()));
  }

  @Test
  void aJobThatTheLedgerDoesNotHaveIsABadCall() {
    replay();

    Ran refused =
        Ran.command("results", "--ledger", bench.ledger(), "--job", "Other engine").refused(2);

    assertTrue(refused.err().contains("\"Small engine\""), refused::toString);
  }

  @Test
  void optionsTakeTheirValuesBehindABlankOrAnEqualsSign() {
    replay();

    Ran blank = Ran.command("results", "--ledger", bench.ledger(), "--job", "Small engine");
    Ran equals = Ran.command("results", "--ledger=" + bench.ledger(), "--job=Small engine");

    assertEquals(blank.ended(0), equals);
  }

  @Test
  void aPathThatBeginsWithAnAtSignIsAPathAndNoFileOfWords() {
    Path job = bench.job();

    Ran refused =
        Ran.command("replay", "--job", "@" + job, "--capture", bores(), "--ledger", bench.ledger())
            .refused(2);

    assertTrue(refused.err().startsWith("@" + job + ": "), refused::toString);
  }

  private void replay() {
    Ran.command("replay", "--job", bench.job(), "--capture", bores(), "--ledger", bench.ledger())
        .ended(0);
  }

  private Path bores() {
    return bench.bores(BenchFolder.BORES);
  }
}
