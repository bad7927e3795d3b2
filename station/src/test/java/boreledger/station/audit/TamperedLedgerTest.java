package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.Chain;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Version;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One defect each, with everything that the audit says of it. */
class TamperedLedgerTest {
  @TempDir Path folder;
  private AuditedLedger ledger;

  @BeforeEach
  void gauge() {
    ledger = AuditedLedger.gauged(folder);
  }

  @Test
  void anUntouchedLedgerIsIntactAndEveryReadingComesOutAgain() {
    AuditReport report = ledger.audit();

    assertEquals(List.of(), report.findings());
    assertTrue(report.intact());
    assertEquals(AuditedLedger.LAST, report.entries());
    assertEquals(8, report.recomputed());
    assertEquals(0, report.differing());
    assertEquals(List.of("Small engine"), report.resultsOf());
    assertEquals(List.of(Version.PROGRAM), report.programs());
    assertEquals(ledger.hash(AuditedLedger.LAST), report.head());
    assertEquals(List.of(), report.notices());
  }

  @Test
  void changedCaution() {
    ledger.exchanged(AuditedLedger.BORE, "\"cautions\":[]", "\"cautions\":[\"none\"]");

    String computed =
        Chain.link(
                Bytes.ofHex(ledger.hash(AuditedLedger.BORE - 1)),
                AuditedLedger.BORE,
                ledger.body(AuditedLedger.BORE))
            .toHex();
    finds(
        AuditedLedger.BORE,
        "its hash does not follow from its body and the entry before: computed "
            + computed
            + ", stored "
            + ledger.hash(AuditedLedger.BORE));
  }

  @Test
  void changedCautionWithItsOwnHashMadeToFit() {
    ledger.exchanged(AuditedLedger.BORE, "\"cautions\":[]", "\"cautions\":[\"none\"]");
    String fitting =
        Chain.link(
                Bytes.ofHex(ledger.hash(AuditedLedger.BORE - 1)),
                AuditedLedger.BORE,
                ledger.body(AuditedLedger.BORE))
            .toHex();
    ledger.tampered("UPDATE entry SET hash = x'" + fitting + "' WHERE seq = 9");

    Remark only = only();
    assertEquals(AuditedLedger.BORE + 1, only.entry(), "the next one's link is broken");
    assertTrue(only.what().startsWith("its hash does not follow"), only.what());
  }

  @Test
  void deletedRefusal() {
    ledger.tampered("DELETE FROM entry WHERE seq = 18");

    List<Remark> findings = ledger.audit().findings();
    assertEquals(new Remark(19L, "follows entry 17: 1 missing between"), findings.get(0));
    assertTrue(findings.get(1).what().startsWith("its hash does not follow"), findings::toString);
    assertEquals(new Remark(19L, "ends session 16 before its plan is done"), findings.get(2));
    assertEquals(3, findings.size());
  }

  @Test
  void deletedFirstEntry() {
    ledger.tampered("DELETE FROM entry WHERE seq = 1");

    List<Remark> findings = ledger.audit().findings();
    assertEquals(new Remark(2L, "follows entry 0: 1 missing between"), findings.get(0));
    assertEquals(
        new Remark(2L, "a ledger begins with one entry of the kind ledger, and has no other"),
        findings.get(2));
  }

  @Test
  void noEntryAtAll() {
    ledger.tampered("DELETE FROM entry");

    finds(null, "there is no entry at all; every ledger begins with one");
  }

  @Test
  void swappedReadings() {
    ledger.tampered(
        "UPDATE entry SET seq = 999 WHERE seq = 9",
        "UPDATE entry SET seq = 9 WHERE seq = 10",
        "UPDATE entry SET seq = 10 WHERE seq = 999");

    List<Remark> findings = ledger.audit().findings();
    assertEquals(List.of(9L, 9L, 10L, 11L), entries(findings));
    assertEquals(
        "taken at cylinder 1, 12 mm below the deck, pin axis, where the plan asks for cylinder 1,"
            + " 12 mm below the deck, thrust axis",
        findings.get(1).what());
  }

  @Test
  void duplicatedReadingAtTheEnd() {
    ledger.tampered(
        "INSERT INTO entry (seq, body, hash) SELECT 20, body, hash FROM entry WHERE seq = 18");

    List<Remark> findings = ledger.audit().findings();
    assertEquals(List.of(20L, 20L), entries(findings));
    assertEquals(
        "taken at cylinder 1, top ring gap, 60 mm below the deck, where the plan asks for nothing",
        findings.get(1).what());
  }

  @Test
  void readingsInAnotherOrder() {
    ledger.tampered("UPDATE entry SET seq = seq + 100 WHERE seq BETWEEN 9 AND 11");

    assertEquals(
        new Remark(12L, "follows entry 8: 3 missing between"), ledger.audit().findings().get(0));
  }

  @Test
  void missingTrigger() {
    ledger.changed("DROP TRIGGER entry_no_update");

    finds(null, "trigger entry_no_update is missing");
  }

  @Test
  void changedTrigger() {
    ledger.changed("DROP TRIGGER entry_no_delete");
    ledger.changed(
        "CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry WHEN OLD.seq > 5"
            + " BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END");

    finds(null, "trigger entry_no_delete is not as a ledger's must be");
  }

  @Test
  void extraTable() {
    ledger.changed("CREATE TABLE remarks (words TEXT)");

    finds(null, "table remarks does not belong into a ledger");
  }

  @Test
  void extraView() {
    ledger.changed("CREATE VIEW readings AS SELECT seq FROM entry");

    finds(null, "view readings does not belong into a ledger");
  }

  @Test
  void extraIndex() {
    ledger.changed("CREATE INDEX by_hash ON entry (hash)");

    finds(null, "index by_hash does not belong into a ledger");
  }

  @Test
  void extraTrigger() {
    ledger.changed("CREATE TRIGGER quietly AFTER INSERT ON entry BEGIN SELECT RAISE(IGNORE); END");

    finds(null, "trigger quietly does not belong into a ledger");
  }

  @Test
  void statisticsTable() {
    ledger.changed("ANALYZE");

    List<String> findings = ledger.audit().findings().stream().map(Remark::what).toList();
    assertTrue(
        findings.contains("table sqlite_stat1 does not belong into a ledger"), findings::toString);
  }

  @Test
  void otherVersion() {
    ledger.changed("PRAGMA user_version = 0");

    List<Remark> findings = ledger.audit().findings();
    assertEquals(new Remark(null, "user_version is 0, must be 1"), findings.get(0));
    assertEquals(
        new Remark(
            null,
            "no results can be computed again: "
                + ledger.file()
                + ": ledger version 0, which no program writes; go on with a copy kept elsewhere"),
        findings.get(1));
  }

  @Test
  void newerVersion() {
    ledger.changed("PRAGMA user_version = 2");

    LedgerFault fault =
        assertThrows(
            LedgerFault.class,
            () -> LedgerAudit.of(ledger.file(), Map.of(), Set.of(), (entries, of) -> true));
    assertEquals(
        ledger.file()
            + ": ledger version 2, this program knows 1; use the newer program that wrote it",
        fault.getMessage());
  }

  @Test
  void unknownKey() {
    ledger.exchanged(14, "{\"kind\":\"ended\"", "{\"kind\":\"ended\",\"by\":\"me\"").rechained();

    String what = ledger.audit().findings().get(0).what();
    assertTrue(
        what.startsWith("entry 14 of the ledger is not readable: Unrecognized field \"by\""), what);
  }

  @Test
  void repeatedKey() {
    ledger.exchanged(14, "\"session\":7", "\"session\":7,\"session\":7").rechained();

    String what = ledger.audit().findings().get(0).what();
    assertTrue(
        what.startsWith("entry 14 of the ledger is not readable: Duplicate field 'session'"), what);
  }

  @Test
  void numberWrittenOtherwise() {
    ledger.exchanged(14, "\"session\":7", "\"session\":7.0").rechained();

    finds(14L, "entry 14 does not say session as this program writes it");
  }

  @Test
  void aClockThatWentBackIsNoticedAndBreaksNothing() {
    ledger.exchanged(13, "2031-05-06T08:01:00Z", "2031-05-06T07:01:00Z").rechained();

    AuditReport report = ledger.audit();
    assertTrue(report.intact());
    assertEquals(
        List.of(
            new Remark(
                13L,
                "the clock on the wall went back from 2031-05-06T08:00:50Z to"
                    + " 2031-05-06T07:01:00Z")),
        report.notices());
  }

  @Test
  void aLedgerThatIsWrongThroughoutIsToldInAThousandFindingsAndCounted() {
    Remarks remarks = new Remarks();
    for (long i = 0; i < 2500; i++) {
      remarks.finding(i, "wrong");
    }

    assertEquals(Remarks.MOST_KEPT, remarks.findings().size());
    assertEquals(2500, remarks.findingsInAll());
  }

  private Remark only() {
    List<Remark> findings = ledger.audit().findings();
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0);
  }

  private void finds(Long entry, String what) {
    assertEquals(List.of(new Remark(entry, what)), ledger.audit().findings());
  }

  private static List<Long> entries(List<Remark> findings) {
    return findings.stream().map(Remark::entry).toList();
  }
}
