package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.keeping.Choice;
import boreledger.station.keeping.Export;
import boreledger.station.keeping.Import;
import boreledger.station.keeping.Progress;
import boreledger.station.ledger.Chain;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.Seal;
import boreledger.station.seal.SealKey;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What came from another ledger is held to the same as what was gauged here.
 *
 * <p>The ledger's entries: 1 ledger, 2 the import's opening, then the other ledger's 1 to 19 and
 * its seal, each two numbers higher.
 */
class ImportedEntriesAuditTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final long OPENING = 2;
  private static final long BORE = OPENING + AuditedLedger.BORE;
  private static final long SEAL = AuditedLedger.LAST + 1;

  @TempDir Path folder;
  private AuditedLedger other;
  private AuditedLedger ledger;
  private SealKey key;
  private Seal seal;

  @BeforeEach
  void gaugeSealAndImport() throws Exception {
    other = AuditedLedger.gauged(folder.resolve("other"));
    key = new KeyFile(folder.resolve("key.pem")).make(null);
    seal = sealed();
    Path file = folder.resolve("ledger.db");
    Path export = folder.resolve("other.json");
    new Export(other.file(), Export.Format.JSON, new Choice(null, null))
        .into(export, false, Progress.UNWATCHED);
    try (Ledger into = Ledger.openOrCreate(file)) {
      new Import(export, "A. Turner", Clock.systemUTC()).into(into, Progress.UNWATCHED);
    }
    ledger = AuditedLedger.at(file);
  }

  @Test
  void importedReadingsAreComputedAgainAndCount() {
    AuditReport report = audit(Map.of());

    assertEquals(List.of(), report.findings());
    assertEquals(List.of(), report.notices());
    assertEquals(8, report.recomputed());
    assertEquals(0, report.differing());
    assertEquals(List.of("Small engine"), report.resultsOf());
  }

  @Test
  void aChangedBodyIsFoundInBothChains() {
    ledger.exchanged(BORE, "cautions\\\":[]", "cautions\\\":[\\\"none\\\"]");

    List<Remark> findings = audit(Map.of()).findings();
    assertEquals(2, findings.size(), findings::toString);
    assertTrue(findings.get(0).what().startsWith("its hash does not follow from its body"));
    assertEquals(foreignBreak(), findings.get(1));
  }

  @Test
  void aChangedBodyUnderANewChainIsFoundInTheOtherLedgersChain() {
    ledger.exchanged(BORE, "cautions\\\":[]", "cautions\\\":[\\\"none\\\"]").rechained();

    assertEquals(List.of(foreignBreak()), audit(Map.of()).findings());
  }

  @Test
  void aChangedValueUnderTwoNewChainsDoesNotComeOutAgain() throws Exception {
    rewrite(AuditedLedger.BORE, "\"value_mm\":0.028,\"standard", "\"value_mm\":0.018,\"standard");

    AuditReport report = audit(Map.of());
    assertEquals(
        new Remark(BORE, "value_mm is stored as 0.018, computed again as 0.028"),
        report.findings().get(0));
    assertEquals(1, report.differing());
  }

  @Test
  void whatOnlyASealCanShowTheOtherLedgersSealShows() throws Exception {
    String before = other.hash(AuditedLedger.LAST);
    rewrite(AuditedLedger.BORE, "\"cautions\":[]", "\"cautions\":[\"none\"]");

    assertEquals(
        List.of(
            new Remark(
                OPENING + SEAL,
                "the seal of A. Turner (entry 22, 20 of ledger "
                    + seal.ledger()
                    + ") does not hold: entry 19 had the hash "
                    + before
                    + ", it has "
                    + inner(OPENING + AuditedLedger.LAST).path("hash").asText()
                    + "; the ledger was written anew")),
        audit(Map.of()).findings());
  }

  @Test
  void sealsOfTheOtherLedgerHoldWhereverTheyWereKept() {
    List<SealSeen> seen = audit(Map.of("paper", seal)).seals();

    assertEquals(2, seen.size());
    assertEquals("entry 22, 20 of ledger " + seal.ledger(), seen.get(0).from());
    assertEquals("paper", seen.get(1).from());
    for (SealSeen each : seen) {
      assertTrue(each.holds() && each.known(), each::toString);
      assertEquals(1, each.entriesAfter());
    }
  }

  @Test
  void aSealOfMoreThanWasImportedIsANotice() throws Exception {
    sealed();
    Seal later = sealed();

    AuditReport report = audit(Map.of("paper", later));
    assertTrue(report.intact());
    assertEquals(
        List.of(
            new Remark(
                null,
                "the seal of A. Turner (paper) goes up to entry 21 of ledger "
                    + seal.ledger()
                    + ", of which only 20 were imported: import a later export to check it")),
        report.notices());
  }

  private AuditReport audit(Map<String, Seal> seals) {
    return ledger.audit(seals, Set.<Bytes>of(seal.key()));
  }

  private Remark foreignBreak() {
    ObjectNode entry = inner(BORE);
    Bytes before = Bytes.ofHex(inner(BORE - 1).path("hash").asText());
    return new Remark(
        BORE,
        "the imported entry 9 of ledger "
            + seal.ledger()
            + " has a hash that does not follow from its body and the entry before: computed "
            + Chain.link(before, AuditedLedger.BORE, entry.path("body").asText())
            + ", stored "
            + entry.path("hash").asText());
  }

  /** Changes an imported body and computes both chains anew, as somebody who knows how would. */
  private void rewrite(long number, String piece, String instead) throws Exception {
    List<String> updates = new ArrayList<>();
    Bytes hash = Chain.ORIGIN;
    for (long each = 1; each <= SEAL; each++) {
      ObjectNode entry = inner(OPENING + each);
      String body = entry.path("body").asText();
      if (each == number) {
        assertTrue(body.contains(piece), body);
        body = body.replace(piece, instead);
      }
      hash = Chain.link(hash, each, body);
      updates.add(update(OPENING + each, entry.put("hash", hash.toHex()).put("body", body)));
    }
    updates.add(update(OPENING, inner(OPENING).put("head", hash.toHex())));
    ledger.tampered(updates.toArray(String[]::new)).rechained();
  }

  private static String update(long seq, ObjectNode body) {
    String text = body.toString().replace("'", "''");
    return "UPDATE entry SET body = '" + text + "' WHERE seq = " + seq;
  }

  private ObjectNode inner(long seq) {
    try {
      return (ObjectNode) JSON.readTree(ledger.body(seq));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private Seal sealed() throws Exception {
    try (Ledger open = Ledger.open(other.file());
        LedgerView view = open.view()) {
      Instant at = Instant.parse("2031-05-06T10:00:00Z");
      Seal made = key.seal(view.id(), open.headSeq(), open.headHash(), at, "A. Turner");
      open.append(made.kept());
      return made;
    }
  }
}
