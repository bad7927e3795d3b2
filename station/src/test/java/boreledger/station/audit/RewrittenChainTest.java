package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.Version;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One defect each in a ledger whose chain was made to fit it, so that only computing again from the
 * bytes shows it.
 */
class RewrittenChainTest {
  @TempDir Path folder;
  private AuditedLedger ledger;

  @BeforeEach
  void gauge() {
    ledger = AuditedLedger.gauged(folder);
  }

  @Test
  void changedValueInARewrittenChain() {
    ledger.exchanged(AuditedLedger.BORE, "\"value_mm\":0.028,\"st", "\"value_mm\":0.018,\"st");
    ledger.rechained();

    finds(AuditedLedger.BORE, "value_mm is stored as 0.018, computed again as 0.028");
    assertEquals(1, ledger.audit().differing());
  }

  @Test
  void changedSampleInARewrittenChain() {
    ledger.exchanged(AuditedLedger.BORE, "0.028}]", "0.018}]").rechained();

    finds(
        AuditedLedger.BORE,
        "the sample 2b302e3032380a at 20.0 s is stored as 0.018, computed again as 0.028");
  }

  @Test
  void inventedUncertaintyInARewrittenChain() {
    ledger.exchanged(
        AuditedLedger.BORE,
        "\"standard_uncertainty_mm\":null",
        "\"standard_uncertainty_mm\":1.0E-4");
    ledger.rechained();

    finds(
        AuditedLedger.BORE, "standard_uncertainty_mm is stored as 1.0E-4, computed again as null");
  }

  @Test
  void otherRuleInARewrittenChain() {
    ledger.exchanged(AuditedLedger.BORE, "\"rule\":\"press\"", "\"rule\":\"rock\"").rechained();

    finds(AuditedLedger.BORE, "the rule is stored as rock, computed again as press");
  }

  @Test
  void bytesThatAreNoFrameInARewrittenChain() {
    ledger.exchanged(AuditedLedger.BORE, "2b302e3032380a", "2b302e303238").rechained();

    finds(AuditedLedger.BORE, "the sample 2b302e303238 is no single frame with a value");
  }

  @Test
  void bytesThatAreNoBytesInARewrittenChain() {
    ledger.exchanged(AuditedLedger.BORE, "2b302e3032380a", "2b302e303238a").rechained();

    finds(AuditedLedger.BORE, "the sample 2b302e303238a is no single frame with a value");
  }

  @Test
  void changedDocumentInARewrittenChain() {
    ledger.exchanged(2, "taper_max_mm = 0.050", "taper_max_mm = 0.090").rechained();

    Remark only = only();
    assertEquals(2L, only.entry());
    assertTrue(
        only.what().startsWith("small.job.toml is not the text of its content hash: computed "),
        only.what());
  }

  @Test
  void missingDocumentInARewrittenChain() {
    ledger.exchanged(7, "\"gauge\":\"", "\"gauge\":\"00").rechained();

    Remark first = ledger.audit().findings().get(0);
    assertEquals(7L, first.entry());
    assertTrue(
        first.what().startsWith("the session cannot be followed: no gauge of content hash 00"),
        first.what());
    assertEquals(6, ledger.audit().differing(), "readings without their gauge are not confirmed");
  }

  @Test
  void otherJobNameInARewrittenChain() {
    ledger.exchanged(7, "Small engine", "Large engine").rechained();

    assertEquals(
        new Remark(7L, "names the job Large engine, its file Small engine"),
        ledger.audit().findings().get(0));
  }

  @Test
  void placeThatIsNotInThePlan() {
    ledger.exchanged(AuditedLedger.BORE, "\"depth_mm\":12.0", "\"depth_mm\":13.0").rechained();

    assertEquals(
        new Remark(
            AuditedLedger.BORE,
            "taken at cylinder 1, 13 mm below the deck, thrust axis, which is not in the session's plan"),
        ledger.audit().findings().get(0));
  }

  @Test
  void otherSettingInARewrittenChain() {
    ledger.exchanged(AuditedLedger.BORE, "\"setting\":8", "\"setting\":7").rechained();

    finds(AuditedLedger.BORE, "refers to entry 7 as the setting in force, where 8 is");
  }

  @Test
  void readingOfASessionThatIsNone() {
    ledger.exchanged(13, "\"session\":7", "\"session\":3").rechained();

    assertEquals(
        new Remark(13L, "belongs to session 3, which cannot be followed"),
        ledger.audit().findings().get(0));
  }

  @Test
  void readingByAnotherProgramsFormulaNamesBothVersions() {
    ledger.exchanged(7, "\"program\":\"" + Version.PROGRAM, "\"program\":\"0.0.1");
    ledger.exchanged(AuditedLedger.BORE, "\"value_mm\":0.028,\"st", "\"value_mm\":0.027,\"st");
    ledger.rechained();

    finds(
        AuditedLedger.BORE,
        "value_mm is stored as 0.027, computed again as 0.028 (taken by program 0.0.1, checked by "
            + Version.PROGRAM
            + ")");
    assertEquals(List.of("0.0.1", Version.PROGRAM), ledger.audit().programs());
  }

  private Remark only() {
    List<Remark> findings = ledger.audit().findings();
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0);
  }

  private void finds(Long entry, String what) {
    assertEquals(List.of(new Remark(entry, what)), ledger.audit().findings());
  }
}
