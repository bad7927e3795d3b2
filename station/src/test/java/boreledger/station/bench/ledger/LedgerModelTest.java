package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.EntryLine;
import boreledger.station.app.Standing;
import boreledger.station.app.Workshop;
import boreledger.station.bench.House;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LedgerModelTest {
  @TempDir Path folder;
  private LedgerHouse at;
  private LedgerModel model;

  @BeforeEach
  void boresAndGaps() throws Exception {
    at = LedgerHouse.gauged(folder);
    model = at.model();
  }

  @Test
  void sessionsAreListedNewestFirstAndTheNewestIsShown() {
    assertEquals(List.of(Measure.GAP, Measure.BORE), measures());
    assertEquals(Measure.GAP, model.session().get().opened().measure());
    assertFalse(model.more().get());
    assertTrue(model.entries().lines().size() > 9);
  }

  @ParameterizedTest
  @CsvSource({
    "bore, BORE",
    "Pumphouse GAP, GAP",
    "top, GAP",
    "2031-05 bore, BORE",
    "leaf, GAP",
  })
  void aSearchFindsByJobMeasureRingDateAndGauge(String typed, Measure found) {
    model.search().set(typed);

    assertEquals(List.of(found), measures());
  }

  @Test
  void aSearchForWhatIsNotThereFindsNothingAndTheShownSessionStays() {
    model.search().set("pumphouse second");

    assertEquals(List.of(), model.sessions());
    assertTrue(model.listed().get());
    assertEquals(Measure.GAP, model.session().get().opened().measure());
  }

  @Test
  void noLedgerYetIsAnEmptyRoomAndNoneIsMade() {
    Path nowhere = folder.resolve("none.db");

    at.house.around().workshop().set(new Workshop(nowhere));

    assertEquals(List.of(), model.sessions());
    assertEquals("", model.problem().get());
    assertNull(model.session().get());
    assertFalse(Files.exists(nowhere));
  }

  @Test
  void aFileThatIsNoLedgerIsToldInWords() throws Exception {
    Path letter = Files.writeString(folder.resolve("letter.db"), "Dear reader,\n".repeat(99));

    at.house.around().workshop().set(new Workshop(letter));

    assertTrue(model.problem().get().contains("letter.db"), model.problem().get());
  }

  @Test
  void aReadingIsOpenedDownToItsBytes() {
    LedgerStates.choose(model, Measure.BORE);
    EntryLine line = LedgerStates.line(model, Standing.IN_FORCE, 1);
    ReadingTaken reading = (ReadingTaken) line.entry().body();

    model.entries().open(line);

    ReadingFacts facts = model.entries().facts().get();
    assertEquals("cylinder 1, 12 mm, thrust axis", facts.title());
    assertEquals(reading.samples().get(0).raw(), facts.samples().get(0).hex().replace(" ", ""));
    // The file's sample bytes are a decimal number and a line end, as text: RFC 20 (ASCII).
    assertTrue(facts.samples().get(0).printable().matches("[+-]\\d\\.\\d+.*\\.\\."));
    assertEquals(line.entry().hash().toHex(), fact(facts, "Hash").replace(" ", ""));
    assertEquals(line.entry().seq() + ", in session " + reading.session(), fact(facts, "Entry"));
    assertEquals("in force", fact(facts, "It is"));
    assertTrue(fact(facts, "Setting in force").startsWith("entry " + reading.setting()));
  }

  @Test
  void aBoreReadingHasTheDiameterAndTheBudgetOfTheResults() throws Exception {
    LedgerStates.choose(model, Measure.BORE);

    model.entries().open(LedgerStates.line(model, Standing.IN_FORCE, 1));

    var position =
        at.house.around().results().getValue().cylinders().get(0).bore().positions().get(0);
    ReadingFacts facts = model.entries().facts().get();
    assertTrue(
        fact(facts, "Diameter at 20 \u00b0C")
            .startsWith(String.format(java.util.Locale.ROOT, "%.4f", position.diameterMm())));
    assertEquals(
        position.budget().stream().map(each -> each.line()).toList(),
        facts.budget().stream().map(Fact::name).toList());
    assertTrue(facts.budget().size() > 3);
  }

  @Test
  void lengthsFollowTheUnitThatIsChosen() {
    LedgerStates.choose(model, Measure.BORE);
    EntryLine line = LedgerStates.line(model, Standing.IN_FORCE, 1);
    assertTrue(model.entries().words().get().value(line).endsWith(" mm"));

    at.house.appearance().unit().set(DisplayUnit.IN);

    assertTrue(model.entries().words().get().value(line).endsWith(" in"));
    assertTrue(model.entries().words().get().what(line).contains("0.472 in"));
  }

  @Test
  void aReadingIsTakenBackWithReasonAndNameAndRestored() {
    LedgerStates.choose(model, Measure.BORE);
    EntryLine line = LedgerStates.line(model, Standing.IN_FORCE, 1);
    model.entries().open(line);
    CorrectionModel correction = model.entries().correction();
    correction.reason().why().set("chip under the anvil");
    correction.reason().who().set("A. Turner");

    correction.correct();

    assertEquals("", correction.problem().get());
    assertTrue(correction.restores().get());
    assertTrue(correction.done().get().startsWith("Taken back"), correction.done().get());
    assertEquals(1, at.changed);
    EntryLine struck = LedgerStates.line(model, Standing.TAKEN_BACK, 0);
    assertEquals(line.entry().seq(), struck.entry().seq());
    assertEquals(
        "taken back: chip under the anvil (A. Turner)",
        model.entries().words().get().state(struck));

    correction.reason().why().set("the chip was elsewhere");
    correction.correct();

    assertFalse(correction.restores().get());
    assertEquals("in force", fact(model.entries().facts().get(), "It is"));
    assertEquals(2, at.changed);
  }

  @Test
  void aCorrectionWithoutReasonOrNameIsRefusedBesideTheFieldAndNothingIsWritten() {
    LedgerStates.choose(model, Measure.BORE);
    int before = model.entries().lines().size();
    model.entries().open(LedgerStates.line(model, Standing.IN_FORCE, 1));
    CorrectionModel correction = model.entries().correction();
    Reason reason = correction.reason();

    correction.correct();
    assertTrue(reason.whyProblem().get().startsWith("Say why"), reason.whyProblem().get());
    assertTrue(reason.whoProblem().get().startsWith("Say who"), reason.whoProblem().get());

    reason.why().set("chip");
    correction.correct();
    assertEquals("", reason.whyProblem().get());
    assertTrue(reason.whoProblem().get().startsWith("Say who"), reason.whoProblem().get());

    model.entered();
    assertEquals(before, model.entries().lines().size());
    assertEquals(0, at.changed);
  }

  @Test
  void refusedSamplesStandAmongTheReadingsWithTheirReason() throws Exception {
    LedgerModel damaged =
        new LedgerHouse(
                House.gauged(Files.createDirectory(folder.resolve("damaged")), "bore-damaged"))
            .model();

    EntryLine refused =
        damaged.entries().lines().stream()
            .filter(line -> line.entry().body() instanceof SampleRefused)
            .findFirst()
            .orElseThrow();

    EntryWords words = damaged.entries().words().get();
    assertEquals(((SampleRefused) refused.entry().body()).why(), words.state(refused));
    assertTrue(words.what(refused).startsWith("refused sample"), words.what(refused));
    assertTrue(words.isCaution(refused));
  }

  private List<Measure> measures() {
    return model.sessions().stream().map(session -> session.opened().measure()).toList();
  }

  private static String fact(ReadingFacts facts, String name) {
    return facts.facts().stream()
        .filter(fact -> fact.name().equals(name))
        .map(Fact::value)
        .findFirst()
        .orElseThrow();
  }
}
