package boreledger.station.bench.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.Folders;
import boreledger.station.app.LiveChoice;
import boreledger.station.app.LiveRequest;
import boreledger.station.bench.House;
import boreledger.station.bench.memory.Memory;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StartModelTest {
  @TempDir Path folder;
  private final FakeStart program = new FakeStart();
  private final Memory memory = new Memory(null);
  private House house;
  private Path job;
  private StartModel model;

  @BeforeEach
  void aJobAndNothingChosen() throws IOException {
    house = House.empty(folder);
    job =
        Files.copy(
            House.SAMPLES.resolve("pumphouse-three.job.toml"), folder.resolve("my.job.toml"));
    model = new StartModel(program, house.around(), memory, "bench", 1);
  }

  @Test
  void nothingBeginsWithoutAJob() {
    model.begin();

    assertTrue(model.problem().get().contains("Open a job"), model.problem().get());
    assertEquals(List.of(), program.begun);
  }

  @Test
  void anOpenedJobIsShownRememberedAndHasItsLedgerBesideIt() {
    model.job().open(job);

    assertEquals("Pumphouse three", model.job().card().get().name());
    assertEquals(
        "3 cylinders, in line, bore 96 mm, stroke 104 mm",
        model.job().card().get().details().get(0));
    assertEquals(List.of(job.toAbsolutePath()), model.job().recent());
    assertEquals(folder.resolve("my.ledger.db"), house.ledger());
    assertEquals(List.of("top", "second", "oil-rail"), model.measuring().rings());
  }

  @Test
  void aJobWithAMistakeIsToldWithItsPlaceAndTheOpenOneStays() throws IOException {
    model.job().open(job);
    Path broken = folder.resolve("broken.job.toml");
    Files.writeString(broken, "format = \"boreledger-job/1\"\nname = 3\n");

    model.job().open(broken);

    assertTrue(model.problem().get().contains("broken.job.toml:2:"), model.problem().get());
    assertEquals("Pumphouse three", model.job().card().get().name());
  }

  @Test
  void practisingOnTheOpenJobGoesToTheBench() {
    model.job().open(job);
    model.measuring().settingTemp().set("20,4");
    model.measuring().blockTemp().set("21.3 °C");

    model.begin();

    LiveRequest begun = program.begun.get(0);
    assertEquals(new LiveChoice.Practice(1, 1), begun.listening());
    assertEquals(20.4, begun.settingTempC());
    assertEquals(21.3, begun.blockTempC());
    assertNull(begun.ring());
    assertEquals(List.of("bench"), house.gone());
  }

  @Test
  void oneClickOnTheFirstDayPractisesOnTheInventedEngine() {
    model.practiseNow();

    assertEquals(Folders.sampleJob(), program.begun.get(0).job());
    assertTrue(program.begun.get(0).fresh());
    assertEquals(Folders.practiceLedger(), house.ledger());
    assertEquals(List.of("bench"), house.gone());
  }

  @Test
  void gapsOfARingOnAPortAreAskedForAsChosen() {
    model.job().open(job);
    model.measuring().measure().set(Measure.GAP);
    model.measuring().ring().set("second");
    model.gauge().practising().set(false);
    model.begin();
    assertTrue(model.problem().get().contains("port"), model.problem().get());

    model.gauge().port().set(" /dev/ttyUSB0 ");
    model.gauge().profile().set(model.gauge().profiles().get(1));
    model.begin();

    assertEquals("", model.problem().get());
    LiveRequest begun = program.begun.get(0);
    assertEquals("second", begun.ring());
    assertEquals(
        new LiveChoice.Gauge(model.gauge().profiles().get(1).gauge(), "/dev/ttyUSB0", true),
        begun.listening());
    assertEquals("/dev/ttyUSB0", memory.get("port").orElseThrow());
  }

  @Test
  void whatStandsInTheWayIsToldAndThePersonStays() {
    model.job().open(job);
    program.refusal = "serial port COM9: there is no such port";

    model.begin();

    assertEquals(program.refusal, model.problem().get());
    assertEquals(List.of(), house.gone());
  }

  @ParameterizedTest
  @CsvSource({"warm", "20.4.1", "-300", "200", "NaN"})
  void aTemperatureThatCannotBeIsRefusedInWords(String typed) {
    model.job().open(job);
    model.measuring().blockTemp().set(typed);

    model.begin();

    assertTrue(model.problem().get().contains("temperature"), model.problem().get());
    assertEquals(List.of(), program.begun);
  }

  @Test
  void aJobIsChangedInAFormAndOpenedWhenItWasSaved() {
    model.job().edit();
    assertNull(model.job().editing().get());
    model.job().open(job);

    model.job().edit();
    assertEquals(job, model.job().editing().get());
    model.job().saved(job);

    assertNull(model.job().editing().get());
    assertEquals("Pumphouse three", model.job().card().get().name());
  }

  @Test
  void aNewJobIsMadeBesideTheLastOne() {
    model.job().open(job);

    model.job().make();

    assertEquals(folder.toAbsolutePath(), model.job().editing().get());
    model.job().left();
    assertNull(model.job().editing().get());
  }

  @Test
  void aNewJobIsNotMadeAmongThoseThatCameWithTheProgram() {
    model.job().open(Folders.sampleJob());

    model.job().make();

    assertEquals(Path.of(System.getProperty("user.home")), model.job().editing().get());
  }

  @Test
  void whoListensToTheListsIsToldHoweverLongItTakes() throws Exception {
    List<String> told = new ArrayList<>();
    model.gauge().ports().addListener((InvalidationListener) change -> told.add("ports"));
    model.job().recent().addListener((InvalidationListener) change -> told.add("recent"));
    WeakReference<Object> waste = new WeakReference<>(new Object());
    for (int i = 0; i < 100 && waste.get() != null; i++) {
      System.gc();
    }
    assertNull(waste.get(), "a collection took place");

    model.gauge().lookForPorts();
    model.job().open(job);

    assertEquals(List.of("ports", "recent"), told.stream().distinct().toList());
  }

  @Test
  void whatIsGaugedCanBeStoppedHere() {
    model.job().open(job);
    program.refusal = "Something is being gauged already";
    program.gauging = true;
    model.begin();
    assertTrue(model.going().going().get());

    model.stopGauging();

    assertFalse(program.gauging);
    assertFalse(model.going().going().get());
    assertEquals("", model.problem().get());
  }

  @Test
  void aTrialShowsWhatIsHeardAndEndsWhenGaugingBegins() {
    model.job().open(job);
    model.trial().start(model.gauge().profile().get().gauge(), "/dev/ttyUSB0");
    assertTrue(model.trial().listening().get());
    assertEquals("value 0.012 mm", model.trial().lines().get(2));

    model.begin();

    assertEquals(List.of("stopped"), program.listened);
    assertTrue(!model.trial().listening().get());
  }

  @Test
  void aTrialOnAPortThatCannotBeOpenedSaysWhy() {
    program.refusal = "serial port COM9: there is no such port";

    model.trial().start(Path.of("ascii-line-size"), "COM9");

    assertTrue(model.trial().lines().contains(program.refusal));
    assertTrue(!model.trial().listening().get());
  }
}
