package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.Replay;
import boreledger.station.bench.bores.BoresModel;
import boreledger.station.bench.bores.BoresRoom;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.gaps.GapsModel;
import boreledger.station.bench.gaps.GapsRoom;
import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.view.BenchRoom;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.window.StationScene;
import boreledger.station.bench.words.Language;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.results.JobResults;
import boreledger.station.wording.Statement;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A window that speaks German says nothing in English, whatever there is to caution of. */
class GermanWindowTest {
  private static final double[] WIDE = {1920, 1080};

  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @BeforeEach
  void speakGerman() {
    Language.speak(Language.GERMAN);
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @Test
  void boresWithMuchToCautionOf() throws Exception {
    House house = troubled();
    BoresModel model = new BoresModel(new Findings(house.around()), house.around());
    Set<String> words = new TreeSet<>();
    for (int cylinder = 1; cylinder <= 3; cylinder++) {
      int shown = cylinder;
      words.addAll(
          words(
              house,
              () -> {
                model.cylinder().set(shown);
                return BoresRoom.of(model);
              }));
    }

    assertTrue(words.stream().anyMatch(each -> each.contains("gewandert")), words::toString);
    assertTrue(
        words.stream().anyMatch(each -> each.contains("Kalibrierung des Einstellmaßes")),
        words::toString);
    assertGerman(words, 60);
  }

  @Test
  void gapsWithMuchToCautionOf() throws Exception {
    House house = troubled();
    GapsModel model =
        new GapsModel(
            new Findings(house.around()), house.around(), new Memory(null), house::filing);
    Set<String> words = new TreeSet<>();
    for (String ring : List.of("top", "second", "oil-rail")) {
      for (int cylinder = 1; cylinder <= 3; cylinder++) {
        int shown = cylinder;
        words.addAll(
            words(
                house,
                () -> {
                  model.cylinder().set(shown);
                  model.ring().set(ring);
                  return GapsRoom.of(model);
                }));
      }
    }

    assertTrue(words.stream().anyMatch(each -> each.contains("bricht Ringe")), words::toString);
    assertTrue(words.stream().anyMatch(each -> each.contains("gängige Praxis")), words::toString);
    assertGerman(words, 60);
  }

  @Test
  void theBenchWithWhatGaugesDoWrong() throws Exception {
    try (ScriptedRun run = new ScriptedRun(folder)) {
      BenchModel model =
          new BenchModel(
              new BenchServices(run, run, Tones.SILENT, Voice.SILENT),
              Runnable::run,
              Runnable::run,
              () -> 0);
      run.watch(model::accept);
      run.onLine("COM7");
      Set<String> words = new TreeSet<>(words(model));
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.0008, "5 equal frames in quick succession: the key may be stuck");
      words.addAll(words(model));
      run.notPicked("2 rocks seen, 3 needed");
      words.addAll(words(model));
      run.offer(1.51);
      words.addAll(words(model));
      model.confirmHeld();
      words.addAll(words(model));
      run.offerUntil(20, 0.0009, 0.1713, 0.1518, 0.09);
      run.over(Ending.PLAN_DONE);
      words.addAll(words(model));
      run.beginGaps(Jobs.pumphouse(), Gauges.settled(), "top");
      run.offerUntil(9, 0.281, 0.2402, 0.185);
      model.accept(
          new GaugingEvent.Noticed(
              "the gauge went from mm to in in the middle of the session; check that its setting"
                  + " still holds"));
      words.addAll(words(model));
      model.accept(
          new GaugingEvent.LineGone(
              "serial port COM7: the gauge, its cable or its radio link has gone; waiting for it to"
                  + " come back",
              run.progress()));
      words.addAll(words(model));
      model.fail("serial port COM7: could not be written to; is the gauge still connected?");
      run.over(Ending.LINE_BROKE);
      words.addAll(words(model));

      assertTrue(words.stream().anyMatch(each -> each.contains("Taste klemmt")), words::toString);
      assertTrue(words.stream().anyMatch(each -> each.contains("nicht zwischen")), words::toString);
      assertTrue(words.stream().anyMatch(each -> each.contains("Funkverbindung")), words::toString);
      assertGerman(words, 60);
    }
  }

  /** The samples' engine, gauged by a worse gauge without temperatures, for a stricter maker. */
  private House troubled() throws Exception {
    House house = House.empty(folder);
    copy("signed-decimal-rocked.gauge.toml", "max_error_mm = 0.002", "max_error_mm = 0.001");
    copy("gap-leaf.gauge.toml", "", "");
    Path bores = copy("bore-rocked.capture.jsonl", ",\"setting_temp_c\":20.4", "");
    Path top = copy("gap-top.capture.jsonl", ",\"block_temp_c\":21.3", "");
    Path second = copy("gap-second.capture.jsonl", "", "");
    Path job = folder.resolve("a.job.toml");
    String text =
        Files.readString(House.SAMPLES.resolve("pumphouse-three.job.toml"))
            .replace("gap_min_mm = 0.3\n", "gap_min_mm = 0.45\n")
            .replace("gap_max_mm = 0.85", "gap_max_mm = 0.66")
            .replace("hot_margin_mm = 0.05", "hot_margin_mm = 0.45")
            .replace("ring_temp_c = 190.0\n", "")
            .replace("[engine]\n", "[engine]\ncondition = \"bare\"\nmain_caps = \"torqued\"\n");
    Files.writeString(job, text);
    Replay.prepare(job, List.of(bores, top), null).into(house.ledger(), event -> {});
    Files.writeString(job, text.replace("\"bare\"", "\"torque-plate\""));
    Replay.prepare(job, List.of(second), null).into(house.ledger(), event -> {});
    house.refresh();
    Set<String> cautions = cautions(house);
    assertTrue(cautions.size() >= 8, cautions::toString);
    return house;
  }

  private static Set<String> cautions(House house) {
    JobResults results = house.around().results().getValue();
    Stream<Statement> ofRings =
        results.cylinders().stream()
            .flatMap(each -> each.rings().stream())
            .flatMap(ring -> ring.cautions().stream());
    return Stream.concat(results.cautions().stream(), ofRings)
        .map(each -> each.phrase().name())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Path copy(String name, String piece, String instead) throws Exception {
    Path copy = folder.resolve(name);
    Files.writeString(copy, Files.readString(House.SAMPLES.resolve(name)).replace(piece, instead));
    return copy;
  }

  /** Makes a room on the screen's thread. */
  private interface Making {
    Room room();
  }

  private static Set<String> words(House house, Making making) throws Exception {
    return WaitForAsyncUtils.asyncFx(
            () -> words(RoomPictures.scene(house, making.room(), WIDE[0], WIDE[1])))
        .get();
  }

  private static Set<String> words(BenchModel model) throws Exception {
    return WaitForAsyncUtils.asyncFx(
            () -> {
              Room room = BenchRoom.of(model, new KeyChoices(new Memory(null)));
              return words(
                  new StationScene(model, List.of(room), new Appearance(), WIDE[0], WIDE[1]));
            })
        .get();
  }

  /** Everything that a scene shows or tells a screen reader, budgets unfolded. */
  private static Set<String> words(StationScene scene) {
    Set<String> words = new TreeSet<>();
    for (int pass = 0; pass < 3; pass++) {
      scene.getRoot().applyCss();
      scene.getRoot().layout();
      scene.getRoot().lookupAll(".check").stream()
          .filter(ToggleButton.class::isInstance)
          .forEach(check -> ((ToggleButton) check).setSelected(true));
    }
    collect(scene.getRoot(), words);
    scene.setRoot(new Pane());
    return words;
  }

  private static void collect(Node node, Set<String> words) {
    if (!node.isVisible()) {
      return;
    }
    if (node.getAccessibleText() != null) {
      words.add(node.getAccessibleText());
    }
    if (node instanceof Labeled labeled && labeled.getText() != null) {
      words.add(labeled.getText());
    } else if (node instanceof javafx.scene.text.Text text) {
      words.add(text.getText());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, words));
    }
  }

  private static void assertGerman(Set<String> words, int fewest) {
    List<String> english =
        words.stream()
            .filter(each -> !EnglishWords.in(each).isEmpty())
            .map(each -> EnglishWords.in(each) + " in: " + each)
            .toList();
    assertEquals("", String.join("\n", english));
    assertTrue(words.size() >= fewest, "texts seen " + words.size());
  }
}
