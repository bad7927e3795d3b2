package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.EntryLine;
import boreledger.station.app.Standing;
import boreledger.station.app.UsageProblem;
import boreledger.station.bench.words.Language;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings that are moved, and how corrections are written. */
class CorrectionModelTest {
  @TempDir Path folder;
  private LedgerHouse at;
  private LedgerModel model;
  private CorrectionModel correction;

  @BeforeEach
  void bores() throws Exception {
    at = LedgerHouse.gauged(folder);
    model = at.model();
    LedgerStates.choose(model, Measure.BORE);
    correction = model.entries().correction();
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @Test
  void whileEveryPlaceHasAReadingThereIsNowhereToMoveTo() {
    model.entries().open(LedgerStates.line(model, Standing.IN_FORCE, 3));

    assertEquals(List.of(), correction.places());
    assertTrue(correction.nowhere().get());
  }

  @Test
  void aReadingIsMovedToThePlaceOfOneThatWasTakenBack() {
    EntryLine struck = takeBack(4);
    EntryLine wrong = LedgerStates.line(model, Standing.IN_FORCE, 3);
    model.entries().open(wrong);
    assertEquals(List.of(struck.position()), correction.places());
    correction.place().set(struck.position());
    say("one level deeper");

    correction.move();

    assertEquals("", correction.problem().get());
    assertTrue(correction.done().get().startsWith("It stands there now"));
    EntryLine moved = entry(wrong.entry().seq());
    assertEquals(struck.position(), moved.position());
    assertEquals(Standing.IN_FORCE, moved.standing());
    Moved said = (Moved) last().entry().body();
    assertEquals("one level deeper", said.why());
    assertEquals("A. Turner", said.who());
    assertEquals(2, at.changed);
    assertEquals(List.of(wrong.position()), correction.places());
    assertNull(correction.place().get());
    String first = model.entries().words().get().place(wrong.position());
    assertTrue(
        model.entries().facts().get().facts().contains(new Fact("Said at first", first)),
        model.entries().facts().get().facts().toString());
  }

  @Test
  void withoutAPlaceNothingIsMovedAndThePlaceIsAskedFor() {
    takeBack(4);
    int before = model.entries().lines().size();
    model.entries().open(LedgerStates.line(model, Standing.IN_FORCE, 3));
    say("one level deeper");

    correction.move();

    assertEquals("Choose the place.", correction.placeProblem().get());
    assertEquals(before, model.entries().lines().size());
    correction.correct();
    assertEquals("", correction.placeProblem().get());
  }

  @Test
  void aReadingThatWasTakenBackCannotBeMoved() {
    EntryLine struck = takeBack(4);
    model.entries().open(entry(struck.entry().seq()));

    assertEquals(List.of(), correction.places());
    assertTrue(correction.restores().get());
    assertEquals(false, correction.nowhere().get());
  }

  @Test
  void everyCorrectionGoesThroughTheRoomsWriter() throws Exception {
    List<Object> written = new ArrayList<>();
    var byItself = at.writer;
    at.writer =
        (ledger, bodies) -> {
          written.addAll(bodies);
          return byItself.write(ledger, bodies);
        };
    at.gauging = true;

    EntryLine struck = takeBack(4);
    move(3, struck.position());
    model.entries().openAbout();
    model.entries().about().blockTemp().set("24");
    say("misread");
    model.entries().about().amend();

    assertEquals(
        List.of("TakenBack", "Moved", "Amended"),
        written.stream().map(each -> each.getClass().getSimpleName()).toList());
    assertEquals(struck.entry().seq(), ((TakenBack) written.get(0)).entry());
  }

  @Test
  void whatTheWriterRefusesIsToldInTheLanguageThatIsSpokenAndMayBeTriedAgain() throws Exception {
    var byItself = at.writer;
    at.writer =
        (ledger, bodies) -> {
          throw new LedgerFault("session 7 is being gauged; end or stop it at the bench first");
        };
    Language.speak(Language.GERMAN);
    EntryLine line = takeBack(4);
    assertTrue(correction.problem().get().startsWith("Sitzung 7 wird gerade gemessen"));

    at.writer =
        (ledger, bodies) -> {
          throw new UsageProblem("a gauging is just beginning or ending; try again in a moment");
        };
    correction.correct();
    assertTrue(
        correction.problem().get().contains("gleich noch einmal"), correction.problem().get());

    at.writer = byItself;
    correction.correct();
    assertEquals("", correction.problem().get());
    assertEquals(Standing.TAKEN_BACK, entry(line.entry().seq()).standing());
  }

  private EntryLine takeBack(int index) {
    EntryLine line = LedgerStates.line(model, Standing.IN_FORCE, index);
    model.entries().open(line);
    say("chip under the anvil");
    correction.correct();
    return line;
  }

  private void move(int index, Position to) {
    model.entries().open(LedgerStates.line(model, Standing.IN_FORCE, index));
    correction.place().set(to);
    say("one level deeper");
    correction.move();
  }

  private void say(String why) {
    correction.reason().why().set(why);
    correction.reason().who().set("A. Turner");
  }

  private EntryLine entry(long seq) {
    return model.entries().lines().stream()
        .filter(line -> line.entry().seq() == seq)
        .findFirst()
        .orElseThrow();
  }

  private EntryLine last() {
    return model.entries().lines().get(model.entries().lines().size() - 1);
  }
}
