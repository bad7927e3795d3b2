package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import java.nio.file.Path;
import java.util.List;

/**
 * The commands that read a ledger, and one that writes to it.
 *
 * @param ledger the ledger, whatever it is
 * @param bench where the job, the captures and the sheet stand
 */
record Asking(Path ledger, BenchFolder bench) {
  Ran results() {
    return Ran.command("results", "--ledger", ledger);
  }

  Ran audit() {
    return Ran.command("audit", "--ledger", ledger);
  }

  Ran report() {
    return Ran.command(
        "report", "--ledger", ledger, "--out", bench.path().resolve("sheet.pdf"), "--replace");
  }

  Ran replay() {
    return Ran.command(
        "replay",
        "--ledger",
        ledger,
        "--job",
        bench.job(),
        "--capture",
        bench.bores(BenchFolder.BORES));
  }

  /** Makes sure that every reading command says this after the ledger's name, and nothing else. */
  void readingIsRefused(String why) {
    for (Ran ran : List.of(results(), audit(), report())) {
      assertEquals(ledger + why, ran.refused(4).err().strip());
    }
  }

  /** Makes sure that writing ends with this after the ledger's name, and without a trace. */
  void writingIsRefused(String why) {
    Ran ran = replay().ended(4);
    assertEquals(ledger + why, ran.err().lines().reduce((earlier, later) -> later).orElse(""));
    assertFalse(ran.err().contains("\tat "), ran::toString);
    assertEquals("", ran.out());
  }

  /** Makes sure that the ledger can be read and is intact, with this many entries. */
  void isIntact(long entries) {
    assertEquals(
        "Intact: " + entries + " entries, each as it was written, and every value comes out again.",
        audit().ended(0).out().lines().findFirst().orElse(""));
    for (Ran ran : List.of(results(), report())) {
      assertTrue(ran.status() < 2, ran::toString);
      assertEquals("", ran.err());
    }
  }
}
