package boreledger.station.bench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.ScriptedRun;
import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.window.StationWindow;
import boreledger.station.gauging.Ending;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The real window without a display: a scripted run is seen, and the keys are answered. */
@ExtendWith(ApplicationExtension.class)
class BenchWindowTest {
  @TempDir static Path folder;
  private static int ledgers;

  private ScriptedRun run;
  private BenchModel model;
  private Stage stage;

  @Start
  private void open(Stage newStage) throws Exception {
    stage = newStage;
    Path own = folder.resolve("ledger-" + ledgers++);
    Files.createDirectory(own);
    run = new ScriptedRun(own);
    model =
        new BenchModel(
            new BenchServices(run, run, Tones.SILENT, Voice.SILENT),
            Platform::runLater,
            Runnable::run,
            () -> System.nanoTime() / 1e9);
    run.watch(model::accept);
    new StationWindow(
            model,
            List.of(BenchRoom.of(model, new KeyChoices(new Memory(null)))),
            new Appearance(),
            stage)
        .show();
  }

  @AfterEach
  void closeTheLedger() throws LedgerFault {
    WaitForAsyncUtils.waitForFxEvents();
    run.close();
  }

  @Test
  void aSessionIsSeenFromItsFirstPlaceToItsVerdicts(FxRobot robot) throws LedgerFault {
    assertEquals("Ready", words(robot, "place-title"));

    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(10, 0.013);
    run.live(-0.0021);
    assertEquals("Pumphouse three", words(robot, "job"));
    assertEquals("Cylinder 2", words(robot, "place-title"));
    assertEquals("60 mm below the deck, pin axis", words(robot, "place-detail"));
    assertEquals("Taken: cylinder 2, 60 mm, thrust axis, +0.0130 mm", words(robot, "saying"));
    assertEquals("Size 95.9999 mm", words(robot, "live-size"));
    assertEquals(
        "Deviation from the setting: \u22120.0021 mm",
        robot.lookup("#live").queryAs(Pane.class).getAccessibleText());
    assertEquals("10 of 20 readings", words(robot, "progress-words"));
    assertEquals("now", words(robot, "cell-2-2"));
    assertTrue(words(robot, "cell-2-1").startsWith("96.0"), words(robot, "cell-2-1"));
    assertEquals("Smallest so far \u22120.0021 mm", words(robot, "trace-words"));
    assertEquals("Receiving, last sample just now", words(robot, "line-words"));
    assertEquals("practice line, 9600 baud", words(robot, "line-source"));
    assertEquals("Pumphouse three: Bore diameters", stage.getTitle());

    run.offerUntil(20, 0.013);
    run.over(Ending.PLAN_DONE);
    assertEquals("Plan done", words(robot, "closing-title"));
    assertTrue(robot.lookup("#closing").query().isVisible());
    assertEquals(
        List.of("Cylinder 1", "Cylinder 2", "Cylinder 3"),
        robot.lookup(".verdict-title").queryAll().stream()
            .map(node -> ((Labeled) node).getText())
            .toList());
  }

  @Test
  void severalSessionsFollowEachOtherInOneWindow(FxRobot robot) throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(20, 0.013);
    run.over(Ending.PLAN_DONE);
    for (String ring : List.of("top", "second")) {
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), ring);
      run.offerUntil(1, 0.48);

      assertEquals("End gaps, " + ring + " ring", words(robot, "gauged"));
      assertEquals("1 of 9 readings", words(robot, "progress-words"));
      assertEquals("0.4800", words(robot, "cell-1-1"));
      assertFalse(robot.lookup("#closing").query().isVisible());
      assertFalse(robot.lookup("#trace").query().isVisible());
      run.over(Ending.LINE_ENDED);
    }
  }

  @Test
  void keyTTakesAHeldValue(FxRobot robot) throws LedgerFault {
    hold();
    assertEquals(
        "97.5120 mm is far from the nominal 96.0000 mm. Take it anyway?", words(robot, "question"));
    assertEquals("Take it (key T)", words(robot, "take"));

    robot.type(KeyCode.T);

    assertEquals("Taken: cylinder 1, 12 mm, thrust axis, +1.5100 mm", words(robot, "saying"));
    assertFalse(isShown(robot, "question"));
    assertEquals("2 of 20 readings", words(robot, "progress-words"));
    assertEquals(1, robot.lookup("#cautions .caution").queryAllAs(Labeled.class).size());
  }

  @Test
  void keyLLeavesAHeldValue(FxRobot robot) throws LedgerFault {
    hold();

    robot.type(KeyCode.L);

    assertEquals(
        "Left: cylinder 1, 12 mm, thrust axis, +1.5100 mm. The position still waits",
        words(robot, "saying"));
    assertFalse(isShown(robot, "question"));
    assertEquals(1, run.left().size());
  }

  @Test
  void keysWithoutAQuestionDoNothing(FxRobot robot) throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(1, 0.001);

    robot.type(KeyCode.T, KeyCode.L);

    assertEquals("1 of 20 readings", words(robot, "progress-words"));
  }

  @Test
  void everyButtonIsReachedByTabAndPressedBySpace(FxRobot robot) throws LedgerFault {
    hold();
    WaitForAsyncUtils.waitForFxEvents();
    Set<String> reached = new TreeSet<>();
    for (int i = 0; i < 20; i++) {
      robot.type(KeyCode.TAB);
      Node focused = stage.getScene().getFocusOwner();
      reached.add(String.valueOf(focused.getId()));
      if ("leave".equals(focused.getId())) {
        break;
      }
    }
    assertTrue(reached.containsAll(List.of("sound", "light", "take", "leave")), "" + reached);

    robot.type(KeyCode.SPACE);

    assertEquals(1, run.left().size());
  }

  @Test
  void keyMSwitchesTheToneAndSaysSo(FxRobot robot) {
    assertEquals("Sound on\nkey M", words(robot, "sound"));

    robot.type(KeyCode.M);

    assertEquals("Sound off\nkey M", words(robot, "sound"));
    assertTrue(model.mutedProperty().get());
    robot.type(KeyCode.M);
    assertFalse(model.mutedProperty().get());
  }

  @Test
  void keyVSwitchesTheVoiceAndSaysSo(FxRobot robot) {
    assertEquals("Voice off\nkey V", words(robot, "voice"));

    robot.type(KeyCode.V);

    assertEquals("Voice on\nkey V", words(robot, "voice"));
    assertTrue(model.spokenProperty().get());
  }

  @Test
  void keyBSwitchesTheLightAndSaysSo(FxRobot robot) {
    robot.type(KeyCode.B);

    assertEquals("Bright\nkey B", words(robot, "light"));
    assertTrue(stage.getScene().getRoot().getStyleClass().contains("bright"));
    robot.type(KeyCode.B);
    assertFalse(stage.getScene().getRoot().getStyleClass().contains("bright"));
  }

  @Test
  void keyF11FillsTheScreenAndGivesItBack(FxRobot robot) {
    robot.type(KeyCode.F11);

    assertEquals("Full\nkey F11", words(robot, "screen"));
    assertTrue(stage.isFullScreen());
    robot.type(KeyCode.F11);
    assertEquals("Window\nkey F11", words(robot, "screen"));
    assertFalse(stage.isFullScreen());
  }

  @Test
  void theRailNamesTheProgramAndTheRoomsThatExist(FxRobot robot) {
    assertEquals("Boreledger", words(robot, "program"));
    assertEquals(
        List.of("Bench, shown now"),
        robot.lookup(".rail-room-shown").queryAll().stream().map(Node::getAccessibleText).toList());
    assertEquals(0, robot.lookup(".rail-room").queryAll().size());

    robot.clickOn(".rail-room-shown");

    assertEquals(1, robot.lookup(".rail-room-shown").queryAll().size());
  }

  @Test
  void everyButtonHasWordsForAScreenReader(FxRobot robot) throws LedgerFault {
    hold();
    WaitForAsyncUtils.waitForFxEvents();
    var buttons = robot.lookup(node -> node instanceof ButtonBase).queryAllAs(ButtonBase.class);
    assertEquals(21, buttons.size());
    for (ButtonBase button : buttons) {
      String spoken =
          button.getAccessibleText() == null ? button.getText() : button.getAccessibleText();
      assertFalse(spoken.isBlank(), button.getId());
    }
    for (String id : List.of("block", "section", "live", "trace")) {
      String spoken = robot.lookup("#" + id).query().getAccessibleText();
      assertTrue(spoken != null && !spoken.isBlank(), id);
    }
  }

  @Test
  void theDigitsStandStillWhateverTheyShow(FxRobot robot) throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    List<Double> places = null;
    for (double valueMm : new double[] {0.1111, -0.8888, 0.0, 1.4747}) {
      run.live(valueMm);
      WaitForAsyncUtils.waitForFxEvents();
      List<Double> now =
          robot.lookup(".digit").queryAllAs(Text.class).stream().map(Text::getX).toList();
      assertEquals(7, now.size());
      assertTrue(places == null || places.equals(now), places + " then " + now);
      places = now;
    }
  }

  private void hold() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(1, 0.001);
    run.offer(1.51);
  }

  private static boolean isShown(FxRobot robot, String id) {
    WaitForAsyncUtils.waitForFxEvents();
    Node node = robot.lookup("#" + id).query();
    return node.getParent().getParent().isVisible();
  }

  private static String words(FxRobot robot, String id) {
    WaitForAsyncUtils.waitForFxEvents();
    return robot.lookup("#" + id).queryAs(Labeled.class).getText();
  }
}
