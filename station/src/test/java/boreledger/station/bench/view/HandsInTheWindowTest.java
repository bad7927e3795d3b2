package boreledger.station.bench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.ScriptedRun;
import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.model.Command;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.window.StationWindow;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What a person asks for by keys, by the grid and by the block, with a real session behind it. */
@ExtendWith(ApplicationExtension.class)
class HandsInTheWindowTest {
  @TempDir static Path folder;
  private static int ledgers;

  private final KeyChoices keys = new KeyChoices(new Memory(null));
  private ScriptedRun run;

  @Start
  private void open(Stage stage) throws Exception {
    Path own = Files.createDirectory(folder.resolve("ledger-" + ledgers++));
    run = new ScriptedRun(own);
    BenchModel model =
        new BenchModel(
            new BenchServices(run, run, Tones.SILENT, Voice.SILENT),
            Platform::runLater,
            Runnable::run,
            () -> System.nanoTime() / 1e9);
    run.watch(model::accept);
    Room other = new Room("other", "Other", new TextField());
    new StationWindow(model, List.of(BenchRoom.of(model, keys), other), new Appearance(), stage)
        .show();
  }

  @AfterEach
  void closeTheLedger() throws LedgerFault {
    WaitForAsyncUtils.waitForFxEvents();
    run.close();
  }

  @Test
  void theSkipKeyLetsAPositionWaitUntilTheEnd(FxRobot robot) throws LedgerFault {
    begin(1);

    robot.type(KeyCode.S);

    assertEquals(
        "Skipped: cylinder 1, 12 mm, thrust axis. It waits until the end", words(robot, "saying"));
    assertEquals("12 mm below the deck, pin axis", words(robot, "place-detail"));
    assertEquals("", words(robot, "cell-1-1"));
    assertEquals("now", words(robot, "cell-1-2"));
  }

  @Test
  void theTakeBackKeyTakesBackAndTheNextTimeRestores(FxRobot robot) throws LedgerFault {
    begin(3);

    robot.type(KeyCode.Z);
    assertTrue(
        words(robot, "saying").startsWith("Taken back: cylinder 1, 12 mm, pin axis"),
        words(robot, "saying"));
    assertEquals("now", words(robot, "cell-1-2"));
    robot.type(KeyCode.Z);

    assertEquals("Restored: cylinder 1, 12 mm, pin axis, +0.0130 mm", words(robot, "saying"));
    assertEquals("3 of 20 readings", words(robot, "progress-words"));
  }

  @Test
  void whatCannotBeDoneSaysWhy(FxRobot robot) throws LedgerFault {
    begin(0);

    robot.type(KeyCode.S);

    assertEquals("Not done: a check on the setting ring cannot be skipped", words(robot, "saying"));
  }

  @Test
  void withoutASessionAKeySaysSo(FxRobot robot) {
    robot.type(KeyCode.S);

    assertEquals("Not done: nothing is being gauged", words(robot, "saying"));
  }

  @Test
  void keysDoNothingInAnotherRoom(FxRobot robot) throws LedgerFault {
    begin(1);
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);

    robot.type(KeyCode.S);

    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(new Position.Bore(1, 12, "thrust"), run.progress().next());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
    assertEquals("12 mm below the deck, thrust axis", words(robot, "place-detail"));
  }

  @Test
  void arrowKeysAndEnterGoToAnotherCellAndGaugeItAgain(FxRobot robot) throws LedgerFault {
    begin(4);
    focus(robot, "cell-2-2");

    robot.type(KeyCode.UP);
    robot.type(KeyCode.LEFT);
    robot.type(KeyCode.ENTER);

    assertEquals(
        "To be gauged again: cylinder 1, 12 mm, thrust axis. Its reading counts until there is a"
            + " new one",
        words(robot, "saying"));
    assertEquals("12 mm below the deck, thrust axis", words(robot, "place-detail"));
    assertTrue(robot.lookup("#cell-1-1").query().isFocused());
    run.offer(0.02);
    assertEquals("Taken: cylinder 1, 12 mm, thrust axis, +0.0200 mm", words(robot, "saying"));
    assertEquals("60 mm below the deck, pin axis", words(robot, "place-detail"));
    assertEquals("4 of 20 readings", words(robot, "progress-words"));
  }

  @Test
  void aClickOnACellGoesThere(FxRobot robot) throws LedgerFault {
    begin(1);

    robot.clickOn("#cell-3-1");

    assertEquals("Going to cylinder 1, 108 mm, thrust axis", words(robot, "saying"));
    assertEquals("now", words(robot, "cell-3-1"));
    assertEquals("", words(robot, "cell-1-1"));
  }

  @Test
  void aClickOnABoreOfTheBlockGoesToWhatWaitsThere(FxRobot robot) throws LedgerFault {
    begin(1);

    robot.clickOn("#bore-3");

    assertEquals("Going to cylinder 3, 12 mm, thrust axis", words(robot, "saying"));
    assertEquals("Cylinder 3 diameters, mm", words(robot, "grid-title"));
  }

  @Test
  void theBlockIsWalkedByArrowKeys(FxRobot robot) throws LedgerFault {
    begin(1);
    focus(robot, "block");
    assertTrue(spoken(robot).endsWith("Cylinder 1: Enter goes there, arrow keys choose another"));

    robot.type(KeyCode.RIGHT);
    assertTrue(spoken(robot).endsWith("Cylinder 2: Enter goes there, arrow keys choose another"));
    robot.type(KeyCode.ENTER);

    assertEquals("Going to cylinder 2, 12 mm, thrust axis", words(robot, "saying"));
  }

  @Test
  void aKeyIsChosenByPressingItAndStandsOnItsButton(FxRobot robot) throws LedgerFault {
    begin(1);
    robot.clickOn("#choose-keys").clickOn("#command-skip");
    assertEquals(
        "Now press the key for: Skip. Escape leaves it as it is", words(robot, "keys-how"));

    robot.type(KeyCode.B);
    assertEquals("Key B is used by the window itself. Press another one", words(robot, "keys-how"));
    assertEquals("Dark\nkey B", words(robot, "light"));
    robot.type(KeyCode.F9);
    assertEquals("Skip is key F9 now", words(robot, "keys-how"));
    assertEquals("Skip (key F9)", words(robot, "command-skip"));
    robot.clickOn("#choose-keys");
    assertFalse(robot.lookup("#keys-how").query().isVisible());
    robot.type(KeyCode.F9);

    assertTrue(words(robot, "saying").startsWith("Skipped:"), words(robot, "saying"));
  }

  @Test
  void escapeLeavesAKeyAsItIs(FxRobot robot) {
    robot.clickOn("#choose-keys").clickOn("#command-read");
    robot.type(KeyCode.ESCAPE);
    robot.type(KeyCode.F9);

    assertEquals(KeyCode.R, keys.key(Command.READ).getValue());
  }

  private void begin(int done) throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(done, 0.013);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static void focus(FxRobot robot, String id) {
    Node node = robot.lookup("#" + id).query();
    robot.interact(node::requestFocus);
  }

  private static String spoken(FxRobot robot) {
    WaitForAsyncUtils.waitForFxEvents();
    return robot.lookup("#block").query().getAccessibleText();
  }

  private static String words(FxRobot robot, String id) {
    WaitForAsyncUtils.waitForFxEvents();
    return robot.lookup("#" + id).queryAs(Labeled.class).getText();
  }
}
