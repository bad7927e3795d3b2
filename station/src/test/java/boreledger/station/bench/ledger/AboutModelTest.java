package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.Standing;
import boreledger.station.bench.words.Language;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is known of a session, and amending its temperatures. */
class AboutModelTest {
  @TempDir Path folder;
  private LedgerHouse at;
  private LedgerModel model;
  private AboutModel about;

  @BeforeEach
  void aSessionOfBores() throws Exception {
    at = LedgerHouse.gauged(folder);
    model = at.model();
    LedgerStates.choose(model, Measure.BORE);
    about = model.entries().about();
    model.entries().openAbout();
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @Test
  void anAmendmentIsWrittenAndShownWithOldNewPersonTimeAndReason() {
    String opened = fact("Opened with");
    assertEquals(opened, fact("In force"));
    about.settingTemp().set("21,5");
    about.blockTemp().set("24 \u00b0C");
    say();

    about.amend();

    assertEquals("", about.problem().get());
    assertTrue(about.done().get().startsWith("Amended, as entry "), about.done().get());
    assertEquals(opened, fact("Opened with"));
    assertEquals("setting ring 21.5 \u00b0C, block 24 \u00b0C", fact("In force"));
    String told = fact("Amended, entry ");
    assertTrue(told.contains("to 21.5 \u00b0C; block from "), told);
    assertTrue(
        told.contains("Why: the thermometer read wrong. Who: A. Turner, 2031-05-07 10:00"), told);
    assertEquals("", about.settingTemp().get());
    assertEquals("A. Turner", about.reason().who().get());
    assertEquals(1, at.changed);
  }

  @Test
  void theResultsGoByTheAmendedTemperature() throws Exception {
    Double before = diameterMm();
    about.blockTemp().set("30");
    say();

    about.amend();

    // A block that was warmer than assumed is smaller at 20 degrees.
    assertTrue(diameterMm() < before, before + " then " + diameterMm());
  }

  @Test
  void temperaturesMayHoldFromAReadingOn() {
    about.blockTemp().set("24");
    long from = LedgerStates.line(model, Standing.IN_FORCE, 5).entry().seq();
    about.fromEntry().set(Long.toString(from));
    say();

    about.amend();

    assertEquals("", about.problem().get());
    assertEquals(fact("Opened with"), fact("In force"));
    assertTrue(fact("In force from ").endsWith("block 24 \u00b0C"), fact("In force from "));
    assertTrue(fact("Amended, entry ").contains(" s of the session on"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"warm", "81", "-41", "20,5,3", "20 mm"})
  void whatIsNoTemperatureIsToldBesideItsFieldAndNothingIsWritten(String typed) {
    int before = model.entries().lines().size();
    about.blockTemp().set(typed);
    say();

    about.amend();

    assertTrue(about.blockProblem().get().contains(typed), about.blockProblem().get());
    assertEquals("", about.settingProblem().get());
    assertEquals(typed, about.blockTemp().get());
    model.entered();
    assertEquals(before, model.entries().lines().size());
  }

  @Test
  void nothingTypedAtAllIsToldBesideTheFields() {
    about.amend();

    assertEquals("Type at least one temperature.", about.settingProblem().get());
    assertTrue(about.reason().whyProblem().get().startsWith("Say why"));
    assertTrue(about.reason().whoProblem().get().startsWith("Say who"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"the third", "2.5", "99999999999999999999"})
  void whatIsNoEntrysNumberIsToldBesideItsField(String typed) {
    about.blockTemp().set("24");
    about.fromEntry().set(typed);
    say();

    about.amend();

    assertTrue(about.fromProblem().get().contains(typed), about.fromProblem().get());
    assertEquals(0, at.changed);
  }

  @Test
  void whatTheLedgerRefusesIsToldInTheLanguageThatIsSpoken() {
    Language.speak(Language.GERMAN);
    about.blockTemp().set("24");
    about.fromEntry().set("1");
    say();

    about.amend();

    assertEquals(
        "Eintrag 1 ist kein Messwert und keine Fortsetzung der Sitzung "
            + model.session().get().id()
            + ".",
        about.problem().get());
  }

  @Test
  void openingAReadingClosesTheSessionsFactsAndTheOtherWayRound() {
    model.entries().open(LedgerStates.line(model, Standing.IN_FORCE, 3));
    assertNull(about.facts().get());

    model.entries().openAbout();
    assertNull(model.entries().facts().get());
    assertNotNull(about.facts().get());
  }

  private void say() {
    about.reason().why().set("the thermometer read wrong");
    about.reason().who().set("A. Turner");
  }

  private String fact(String name) {
    return about.facts().get().facts().stream()
        .filter(
            each -> each.name().equals(name) || name.endsWith(" ") && each.name().startsWith(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " in " + about.facts().get()))
        .value();
  }

  private Double diameterMm() throws Exception {
    at.house.refresh();
    JobResults results = at.house.around().results().getValue();
    return results.cylinders().get(0).bore().positions().get(0).diameterMm();
  }
}
