package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.audit.AuditedLedger;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands audit, seal and take-back. */
class TrustCommandsTest {
  @TempDir Path folder;
  private AuditedLedger ledger;
  private Path key;

  @BeforeEach
  void gauge() {
    ledger = AuditedLedger.gauged(folder);
    key = folder.resolve("key.pem");
  }

  @Test
  void anAuditOfAnUntouchedLedgerIsDone() {
    JsonNode answer = Ran.command("audit", "--ledger", ledger.file(), "--json").ended(0).json();

    assertEquals(19, answer.path("entries").asInt());
    assertTrue(answer.path("intact").asBoolean());
    assertEquals(0, answer.path("findings").size());
    assertEquals(8, answer.path("recomputed").asInt());
    assertEquals(0, answer.path("differing").asInt());
  }

  @Test
  void anAuditWithFindingsAsksForAttentionAndPutsHashesUnderEachOther() {
    ledger.exchanged(9, "\"cautions\":[]", "\"cautions\":[\"none\"]");

    JsonNode answer = Ran.command("audit", "--ledger", ledger.file(), "--json").ended(1).json();
    Ran words = Ran.command("audit", "--ledger", ledger.file()).ended(1);

    assertFalse(answer.path("intact").asBoolean());
    assertEquals(9, answer.at("/findings/0/entry").asInt());
    assertTrue(words.out().startsWith("Not intact: 1 findings in 19 entries."), words::toString);
    assertTrue(words.out().contains("\n    computed "), words::toString);
    assertTrue(words.out().contains("\n    stored   " + ledger.hash(9) + "\n"), words::toString);
  }

  @Test
  void anAuditOfNoLedgerFailsAndMakesNone() {
    Path nowhere = folder.resolve("nowhere.db");

    Ran.command("audit", "--ledger", nowhere).refused(4);

    assertFalse(Files.exists(nowhere));
  }

  @Test
  void anAuditOfAnotherFileFails() throws Exception {
    Path letter = Files.writeString(folder.resolve("letter.db"), "Dear reader,\n".repeat(99));

    Ran.command("audit", "--ledger", letter).refused(4);
  }

  @Test
  void aSealIsKeptInTheLedgerAndInAFileThatTheAuditCompares() throws Exception {
    JsonNode sealed = seal("--json").ended(0).json();

    Path file = Path.of(sealed.path("file").asText());
    assertEquals(Path.of(ledger.file() + "-19.seal"), file);
    assertEquals(20, sealed.path("entry").asInt());
    assertEquals(19, sealed.path("sealed_entry").asInt());
    assertTrue(sealed.path("key_is_new").asBoolean());
    JsonNode audit =
        Ran.command("audit", "--ledger", ledger.file(), "--seal", file, "--key", key, "--json")
            .ended(0)
            .json();
    assertEquals(2, audit.path("seals").size());
    assertTrue(audit.at("/seals/1/holds").asBoolean());
    assertEquals(0, audit.path("notices").size());

    Path line = Files.writeString(folder.resolve("line"), sealed.path("line").asText());
    Ran.command("audit", "--ledger", ledger.file(), "--seal", line).ended(0);
  }

  @Test
  void aSecondSealUsesTheSameKey() {
    seal().ended(0);

    JsonNode again = seal("--json").ended(0).json();

    assertFalse(again.path("key_is_new").asBoolean());
    Ran.command("audit", "--ledger", ledger.file()).ended(0);
  }

  @Test
  void aLedgerWithFindingsIsNotSealed() {
    ledger.changed("DROP TRIGGER entry_no_update");

    Ran ran = seal().ended(1);

    assertEquals("", ran.out());
    assertTrue(ran.err().contains("not sealed, the audit has findings:"), ran::toString);
    assertTrue(ran.err().contains("trigger entry_no_update is missing"), ran::toString);
    assertFalse(Files.exists(key), "no key is made for nothing");
    assertEquals(null, ledger.body(20));
  }

  @Test
  void whatCannotBeSealedIsRefusedInOneLine() throws Exception {
    Path there = Files.writeString(folder.resolve("there"), "x");
    Ran.command("seal", "--ledger", folder.resolve("nowhere.db"), "--name", "A", "--key", key)
        .refused(4);
    Ran.command("seal", "--ledger", ledger.file(), "--name", "A\nB", "--key", key).ended(2);
    Ran.command("seal", "--ledger", ledger.file(), "--name", "A", "--key", key, "--out", there)
        .refused(2);
    Ran.command("seal", "--ledger", ledger.file(), "--name", "A", "--key", there).refused(2);
    Ran.command("audit", "--ledger", ledger.file(), "--seal", there).refused(2);
    assertFalse(Files.exists(key));
  }

  @Test
  void aReadingTakenBackIsShownByTheResultsWithItsReason() {
    Ran back = takeBack(9).ended(0);

    assertEquals(
        "Taken back, as entry 20: entry 9, cylinder 1, 12 mm below the deck, thrust axis,"
            + " +0.0280 mm.",
        back.out().strip());
    JsonNode results = Ran.command("results", "--ledger", ledger.file(), "--json").json();
    assertTrue(results.at("/cylinders/0/bore/positions/0/diameter_mm").isNull());
    assertTrue(
        results
            .path("cautions")
            .toString()
            .contains(
                "cylinder 1, 12 mm below the deck, thrust axis: +0.0280 mm (entry 9) was taken"
                    + " back: chip (A. Turner)."),
        results::toPrettyString);
    Ran.command("audit", "--ledger", ledger.file()).ended(0);
  }

  @Test
  void aReadingThatIsRestoredCountsAgain() {
    takeBack(9).ended(0);

    takeBack(9, "--restore").ended(0);

    JsonNode results = Ran.command("results", "--ledger", ledger.file(), "--json").json();
    assertEquals(96.030, results.at("/cylinders/0/bore/positions/0/diameter_mm").asDouble(), 1e-9);
    Ran.command("audit", "--ledger", ledger.file()).ended(0);
  }

  @Test
  void whatIsNoReadingIsNotTakenBack() {
    takeBack(3).refused(2);
    takeBack(9, "--restore").refused(2);
    assertEquals(null, ledger.body(20));
  }

  private Ran seal(Object... more) {
    return with(more, "seal", "--ledger", ledger.file(), "--name", "A. Turner", "--key", key);
  }

  private Ran takeBack(long entry, Object... more) {
    return with(
        more,
        "take-back",
        "--ledger",
        ledger.file(),
        "--entry",
        entry,
        "--why",
        "chip",
        "--who",
        "A. Turner");
  }

  private static Ran with(Object[] more, Object... args) {
    Object[] all = Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return Ran.command(all);
  }
}
