package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.ledger.Ledger;
import boreledger.station.plan.Position.Bore;
import boreledger.station.session.SmallJob;
import boreledger.station.table.ContentHash;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CorrectionsAuditTest {
  private static final Instant LATER = Instant.parse("2031-05-06T12:00:00Z");
  private static final Bore PIN = new Bore(1, 12, "pin");
  private static final Bore THRUST = new Bore(1, 12, "thrust");

  @TempDir Path folder;
  private AuditedLedger ledger;

  @BeforeEach
  void gauge() {
    ledger = AuditedLedger.gauged(folder);
  }

  @Test
  void aReadingTakenBackIsShownWithItsReason() throws Exception {
    append(takenBack(9));

    AuditReport report = ledger.audit();
    assertEquals(List.of(), report.findings());
    assertEquals(
        List.of(
            new StruckReading(
                9,
                "cylinder 1, 12 mm below the deck, thrust axis",
                0.028,
                20,
                "chip",
                "A. Turner")),
        report.takenBack());
    assertTrue(AuditText.of(report).contains("by entry 20: chip (A. Turner)."));
  }

  @Test
  void aReadingRestoredIsNotShown() throws Exception {
    append(takenBack(9));
    append(restored(9));

    assertEquals(List.of(), ledger.audit().takenBack());
    assertTrue(ledger.audit().intact());
  }

  @Test
  void twoReadingsSwappedAreNoFinding() throws Exception {
    append(moved(9, PIN));
    append(moved(10, THRUST));

    assertEquals(List.of(), ledger.audit().findings());
  }

  @Test
  void aTakeBackOfWhatIsNoReadingIsAFinding() throws Exception {
    append(takenBack(14));

    finds("takes back entry 14, no reading of its session");
  }

  @Test
  void aTakeBackOfAnotherSessionsReadingIsAFinding() throws Exception {
    append(takenBack(17));

    finds("takes back entry 17, no reading of its session");
  }

  @Test
  void aSecondTakeBackIsAFinding() throws Exception {
    append(takenBack(9));
    append(takenBack(9));

    finds("takes entry 9 back, which does not stand any more");
  }

  @Test
  void aRestorationOfWhatStandsIsAFinding() throws Exception {
    append(restored(9));

    finds("restores entry 9, which was not taken back");
  }

  @Test
  void aMoveOutOfThePlanIsAFinding() throws Exception {
    append(moved(9, new Bore(2, 12, "pin")));

    finds("moves entry 9 to no place of the session's plan");
  }

  @Test
  void aPassThatWasWithdrawnIsNoFinding() throws Exception {
    append(pass("top", 5, "0.45"));
    append(withdrawn(20));

    assertEquals(List.of(), ledger.audit().findings());
  }

  @Test
  void aPassOfARingThatTheJobLacksIsAFinding() throws Exception {
    append(pass("fourth", 5, "0.45"));

    finds("no ring named fourth in this job");
  }

  @Test
  void aGapAfterAPassThatNoGapCanHaveIsAFinding() throws Exception {
    append(pass("top", 5, "45"));

    finds(
        "the gap after cannot be: gap 45.0000 mm is outside 0.0000 to 5.0000 mm; check the gauge,"
            + " its unit and its setting");
  }

  @Test
  void aWithdrawalOfWhatIsNoPassIsAFinding() throws Exception {
    append(withdrawn(17));

    finds("withdraws entry 17, no pass of its session that counts");
  }

  @Test
  void aSecondWithdrawalIsAFinding() throws Exception {
    append(pass("top", 5, "0.45"));
    append(withdrawn(20));
    append(withdrawn(20));

    finds("withdraws entry 20, no pass of its session that counts");
  }

  private static Filed pass(String ring, int turns, String afterMm) {
    return new Filed(16, 1, ring, turns, "0.42", afterMm, LATER, "A. Turner");
  }

  private static Withdrawn withdrawn(long entry) {
    return new Withdrawn(16, entry, LATER, "a slip", "A. Turner");
  }

  @Test
  void anAmendmentOfNothingIsAFinding() throws Exception {
    append(amended(0, null, null));

    finds("amends nothing of session 7");
  }

  @Test
  void anAmendmentFromBeforeTheSessionIsAFinding() throws Exception {
    append(amended(-1, 21.0, null));

    finds("amends session 7 from before it was opened");
  }

  @Test
  void anAmendmentToAJobThatIsNotKeptIsAFinding() throws Exception {
    append(amended(0, null, "ab"));

    assertEquals(
        "amends session 7: no job of content hash ab before it",
        ledger.audit().findings().get(0).what());
  }

  @Test
  void anAmendmentToAJobOfAnotherPlanIsAFinding() throws Exception {
    String text = SmallJob.standard().with("[12.0, 60.0]", "[12.0, 61.0]").text();
    append(new Document("job", "small.job.toml", ContentHash.of(text), text));
    append(amended(0, null, ContentHash.of(text)));

    finds("amends session 7 to a job of another plan");
  }

  @Test
  void anAmendmentToAJobOfAnotherNameIsAFinding() throws Exception {
    String text = SmallJob.standard().with("Small engine", "Other engine").text();
    append(new Document("job", "small.job.toml", ContentHash.of(text), text));
    append(amended(0, null, ContentHash.of(text)));

    finds("amends session 7 to a job of another name");
  }

  @Test
  void anAmendmentToATemperatureThatNobodyGaugesAtIsAFinding() throws Exception {
    append(amended(0, 2000.0, null));

    finds("says that the block had 2000.0 °C");
  }

  @Test
  void aCorrectionOfATimeToComeIsANotice() throws Exception {
    append(amended(0, 21.0, null));

    assertEquals(
        List.of(
            new Remark(
                20L, "the clock on the wall showed 2031-05-06T12:00:00Z, which is yet to come")),
        ledger.audit(Map.of(), Set.of(), LATER.minusSeconds(3600)).notices());
    assertEquals(List.of(), ledger.audit(Map.of(), Set.of(), LATER.minusSeconds(300)).notices());
  }

  private static Amended amended(double tS, Double blockTempC, String job) {
    return new Amended(7, tS, LATER, null, blockTempC, job, "mixed up", "A. Turner");
  }

  private void append(EntryBody body) throws Exception {
    try (Ledger open = Ledger.open(ledger.file())) {
      open.append(body);
    }
  }

  private void finds(String what) {
    List<Remark> findings = ledger.audit().findings();
    assertEquals(List.of(what), findings.stream().map(Remark::what).toList());
  }

  private static TakenBack takenBack(long entry) {
    return new TakenBack(7, entry, null, LATER, "chip", "A. Turner", null, null);
  }

  private static Restored restored(long entry) {
    return new Restored(7, entry, null, LATER, "no chip", "A. Turner", null, null);
  }

  private static Moved moved(long entry, Bore to) {
    return new Moved(7, entry, to, null, LATER, "mixed up", "A. Turner");
  }
}
