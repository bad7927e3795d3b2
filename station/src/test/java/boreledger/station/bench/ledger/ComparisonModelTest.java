package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.CompareSessions;
import boreledger.station.app.SessionLine;
import boreledger.station.bench.House;
import boreledger.station.bench.ledger.ComparisonPage.Row;
import boreledger.station.bench.model.Verdict;
import boreledger.station.job.DisplayUnit;
import boreledger.station.results.SessionComparison;
import boreledger.station.wording.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonModelTest {
  @TempDir Path folder;
  private House house;
  private LedgerModel room;
  private ComparisonModel model;

  @BeforeEach
  void gaugeTwice() throws Exception {
    house = LedgerStates.honed(folder);
    open(house);
  }

  private void open(House in) {
    house = in;
    room = new LedgerHouse(in).model();
    model = room.comparison();
    room.entered();
  }

  private SessionLine older() {
    return model.sessions().get(1);
  }

  private SessionLine newer() {
    return model.sessions().get(0);
  }

  private void compare() {
    model.markBefore(older());
    model.markAfter(newer());
    model.compare();
  }

  @Test
  void aBoreThatGrewIsToldByPlaceBeforeAfterDifferenceAndUncertainty() {
    compare();

    assertEquals("", model.problem().get());
    Row thrust = model.page().get().rows().get(0);
    assertEquals("12 mm, thrust", thrust.what());
    assertEquals("96.0300", thrust.before());
    assertEquals("96.0400", thrust.after());
    // The uncertainty of such a difference is worked out by hand in CompareTest: 4.37 micrometres.
    assertTrue(thrust.change().startsWith("+0.0100 ± 0.004"), thrust.change());
    assertEquals("▲ grew, beyond uncertainty", thrust.judged());
    Row pin = model.page().get().rows().get(1);
    assertEquals("= the same within uncertainty", pin.judged());
  }

  @Test
  void theNumbersAreThoseOfTheCommand() throws Exception {
    compare();

    SessionComparison command =
        CompareSessions.of(house.ledger(), older().id(), house.ledger(), newer().id());
    assertEquals(command.changes().size(), model.page().get().rows().size());
    assertEquals(Wording.PLAIN.each(command.cautions()), model.page().get().cautions());
    assertEquals(2, model.page().get().figure().curves().size());
    assertEquals(
        command.changes().get(0).afterMm(),
        model.page().get().figure().curves().get(0).points().get(0).afterMm());
  }

  @Test
  void unlikeConditionsAndPlacesThatOnlyOneReadAreTold() {
    compare();

    ComparisonPage page = model.page().get();
    assertTrue(page.cautions().get(0).contains("torque plate on"), page.cautions()::toString);
    assertEquals(1, page.missing().size());
    assertTrue(page.missing().get(0).startsWith("Read before only: cylinder 1, 60 mm"));
    assertEquals(Verdict.Kind.LOOK, page.verdicts().get(0).kind());
  }

  @Test
  void swappedItShrankAndTheOrderIsACautionWhenTheClockSaysSo() throws Exception {
    compare();
    model.swap();

    assertEquals("▼ shrank, beyond uncertainty", model.page().get().rows().get(0).judged());
    assertEquals(newer().id(), model.before().get().line().id());
  }

  @Test
  void aSessionTakenLaterAsTheOneBeforeIsACaution() throws Exception {
    open(House.gauged(Files.createDirectory(folder.resolve("two")), "bore-press", "bore-rocked"));
    boolean newestLater = newer().opened().wall().isAfter(older().opened().wall());
    model.markBefore(newestLater ? newer() : older());
    model.markAfter(newestLater ? older() : newer());
    model.compare();

    assertTrue(
        model.page().get().cautions().stream().anyMatch(each -> each.contains("was opened before")),
        model.page().get().cautions()::toString);
  }

  @Test
  void inchesAreShownWithTheirOwnDigits() {
    compare();

    house.appearance().unit().set(DisplayUnit.IN);

    Row thrust = model.page().get().rows().get(0);
    // NIST SP 811, appendix B.8: one inch is 25.4 mm exactly; 96.030 / 25.4 = 3.780709.
    assertEquals("3.78071", thrust.before());
    assertTrue(thrust.what().startsWith("0.472 in"), thrust.what());
  }

  @Test
  void enterTakesWhatIsMissingAndThenCompares() {
    model.markNext(older());
    model.markNext(newer());
    assertNull(model.page().get());

    model.markNext(newer());

    assertNotNull(model.page().get());
    assertEquals("[1 before]", model.marks(older()));
    assertEquals("[2 after]", model.marks(newer()));
  }

  @Test
  void unlikeMeasuresAndHalfAChoiceAreToldInWords() throws Exception {
    model.markBefore(older());
    model.compare();
    assertTrue(model.problem().get().startsWith("Choose two"), model.problem().get());

    open(LedgerHouse.gauged(Files.createDirectory(folder.resolve("gaps"))).house);
    compare();

    assertTrue(model.problem().get().contains("measured gap (top)"), model.problem().get());
    assertNull(model.page().get());
  }

  @Test
  void theSecondMayComeFromAnotherLedger() throws Exception {
    House other = LedgerStates.honed(Files.createDirectory(folder.resolve("other")));
    model.markBefore(older());
    model.file().set(other.ledger().toString());
    model.openFile();
    assertEquals("", model.marks(older()), "its session of the same number is another one");
    model.markAfter(newer());
    model.compare();

    assertEquals("", model.problem().get());
    assertEquals(other.ledger(), model.after().get().ledger());
    assertEquals("▲ grew, beyond uncertainty", model.page().get().rows().get(0).judged());
  }

  @Test
  void anotherLedgerThatIsNotThereIsToldAndNoneIsMade() {
    Path nowhere = folder.resolve("nowhere.db");
    model.file().set(nowhere.toString());
    model.openFile();

    assertTrue(model.problem().get().contains("nowhere.db"), model.problem().get());
    assertEquals(List.of(), model.sessions());
    assertTrue(Files.notExists(nowhere));

    model.file().set("");
    model.openFile();
    assertEquals(2, model.sessions().size());
  }

  @Test
  void sessionsAreSearched() throws Exception {
    open(LedgerHouse.gauged(Files.createDirectory(folder.resolve("both"))).house);

    model.search().set("gap");

    assertEquals(
        List.of(Measure.GAP),
        model.sessions().stream().map(session -> session.opened().measure()).toList());
  }

  @Test
  void gapsAreComparedAsTheyWereRead() throws Exception {
    room =
        LedgerStates.ALL.get("compared-gaps").reach(Files.createDirectory(folder.resolve("filed")));

    ComparisonPage page = room.comparison().page().get();

    assertEquals(List.of("12 mm", "60 mm"), page.rows().stream().map(Row::what).toList());
    assertEquals("0.4300", page.rows().get(1).after());
    assertEquals(1, page.figure().curves().size());
  }
}
