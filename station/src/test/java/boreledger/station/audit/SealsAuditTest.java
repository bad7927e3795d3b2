package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.Seal;
import boreledger.station.seal.SealKey;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a chain alone cannot show, a seal does. */
class SealsAuditTest {
  @TempDir Path folder;
  private AuditedLedger ledger;
  private SealKey key;
  private Seal seal;

  @BeforeEach
  void gaugeAndSeal() throws Exception {
    ledger = AuditedLedger.gauged(folder);
    key = new KeyFile(folder.resolve("key.pem")).make(null);
    seal = sealed(ledger.file());
  }

  @Test
  void aSealOfAnUntouchedLedgerHolds() {
    AuditReport report = audit();

    assertTrue(report.intact());
    assertEquals(List.of(), report.notices());
    SealSeen kept = report.seals().get(0);
    assertEquals("entry 20", kept.from());
    assertEquals(19, kept.entry());
    assertEquals(1, kept.entriesAfter());
    assertTrue(kept.known());
    assertTrue(kept.holds());
    assertEquals("paper", report.seals().get(1).from());
  }

  @Test
  void anUnknownKeyIsANotice() {
    AuditReport report = ledger.audit(Map.of(), Set.of());

    assertTrue(report.intact());
    assertEquals(
        List.of(
            new Remark(
                20L,
                "the seal of A. Turner (entry 20) is by a key that is not known here, "
                    + seal.keyText()
                    + ": ask A. Turner")),
        report.notices());
  }

  @Test
  void anotherKeyUnderANameThatSealedBeforeIsANotice() throws Exception {
    key = new KeyFile(folder.resolve("other.pem")).make(null);
    Seal second = sealed(ledger.file());

    assertEquals(
        "the seal of A. Turner (entry 21) is by a key that is not known here and not the one of that"
            + " name before, "
            + second.keyText()
            + ": ask A. Turner",
        ledger.audit(Map.of(), Set.of()).notices().get(1).what());
  }

  @Test
  void aTailCutOffShowsAgainstASealAlone() {
    ledger.tampered("DELETE FROM entry WHERE seq > 14");

    assertTrue(ledger.audit().intact(), "a chain alone cannot show it");
    assertEquals(
        List.of(
            new Remark(
                null,
                "the seal of A. Turner (paper) does not hold: entry 19 was sealed and is gone; the"
                    + " tail was cut off")),
        audit().findings());
  }

  @Test
  void aSessionLeftOutOfARewrittenChainShowsAgainstASealAlone() {
    String sealed = ledger.hash(19);
    ledger.tampered("DELETE FROM entry WHERE seq > 14").rechained();
    AuditedLedger other = AuditedLedger.gauged(folder.resolve("again"));
    for (int seq = 15; seq <= 19; seq++) {
      String body = other.body(seq).replace("10.0", "10.5").replace("'", "''");
      ledger.tampered(
          "INSERT INTO entry (seq, body, hash) VALUES (" + seq + ", '" + body + "', zeroblob(32))");
    }
    ledger.rechained();

    assertEquals(
        new Remark(
            null,
            "the seal of A. Turner (paper) does not hold: entry 19 had the hash "
                + sealed
                + ", it has "
                + ledger.hash(19)
                + "; the ledger was written anew"),
        audit().findings().get(audit().findings().size() - 1));
  }

  @Test
  void aCompleteRewriteShowsAgainstASealAlone() {
    AuditedLedger other = AuditedLedger.gauged(folder.resolve("other"));

    assertTrue(other.audit().intact(), "a chain alone cannot show it");
    List<Remark> findings = other.audit(Map.of("paper", seal), Set.of(seal.key())).findings();
    assertEquals(1, findings.size());
    assertTrue(
        findings
            .get(0)
            .what()
            .startsWith(
                "the seal of A. Turner (paper) does not hold: it is of ledger " + seal.ledger()),
        findings::toString);
  }

  @Test
  void aWrongSignatureIsAFinding() {
    ledger.exchanged(20, "A. Turner", "B. Turner").rechained();

    assertEquals(
        List.of(
            new Remark(
                20L, "the seal of B. Turner (entry 20) does not hold: its signature is wrong")),
        ledger.audit(Map.of(), Set.of(seal.key())).findings());
  }

  @Test
  void aSealOfALaterEntryThanItsOwnIsAFinding() {
    ledger.exchanged(20, "\"entry\":19", "\"entry\":21").rechained();

    assertEquals(
        List.of(
            new Remark(
                20L,
                "the seal of A. Turner (entry 20) does not hold: seals entry 21, which came later")),
        ledger.audit(Map.of(), Set.of(seal.key())).findings());
  }

  private AuditReport audit() {
    return ledger.audit(Map.of("paper", seal), Set.<Bytes>of(seal.key()));
  }

  private Seal sealed(Path file) throws Exception {
    try (Ledger open = Ledger.open(file);
        LedgerView view = open.view()) {
      Seal made =
          key.seal(
              view.id(),
              open.headSeq(),
              open.headHash(),
              Instant.parse("2031-05-06T10:00:00Z"),
              "A. Turner");
      open.append(made.kept());
      return made;
    }
  }
}
