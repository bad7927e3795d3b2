package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.LedgerBook;
import boreledger.station.app.Standing;
import boreledger.station.app.Workshop;
import boreledger.station.bench.RoomPictures;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.TakenBack;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The room without a mouse. */
@ExtendWith(ApplicationExtension.class)
class LedgerKeysTest {
  private static final int MOST_TABS = 12;

  @TempDir Path folder;
  private LedgerHouse at;
  private LedgerModel model;
  private Stage stage;

  @Start
  private void open(Stage newStage) throws Exception {
    stage = newStage;
    at = LedgerHouse.gauged(folder);
    model = at.model();
    stage.setScene(RoomPictures.scene(at.house, LedgerRoom.of(model), 1280, 800));
    stage.show();
  }

  @Test
  void aReadingIsTakenBackByKeysAlone(FxRobot robot) throws Exception {
    tabTo(robot, "ledger-sessions");
    robot.type(KeyCode.DOWN);
    assertEquals(Measure.BORE, model.session().get().opened().measure());
    robot.type(KeyCode.ENTER);
    assertEquals("ledger-entries", focused());
    robot.type(KeyCode.DOWN, KeyCode.DOWN);
    robot.type(KeyCode.ENTER);
    assertEquals("cylinder 1, 12 mm, pin axis", words(robot, "ledger-reading"));

    tabTo(robot, "ledger-why");
    robot.write("chip under the anvil");
    robot.type(KeyCode.TAB);
    robot.write("A. Turner");
    robot.type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();

    assertTrue(words(robot, "ledger-correct-done").startsWith("Taken back"));
    List<Entry> said =
        new LedgerBook(at.house.ledger())
            .entries(model.session().get().id(), LedgerBook.END, 1)
            .lines();
    TakenBack back = (TakenBack) said.get(0).body();
    assertEquals("chip under the anvil", back.why());
    assertEquals("A. Turner", back.who());

    robot.type(KeyCode.ESCAPE);
    assertEquals("ledger-entries", focused());
    assertEquals(back.entry(), LedgerStates.line(model, Standing.TAKEN_BACK, 0).entry().seq());
    robot.type(KeyCode.ESCAPE);
    assertEquals("ledger-sessions", focused());
  }

  @Test
  void aTemperatureIsAmendedByKeysAlone(FxRobot robot) {
    tabTo(robot, "ledger-about");
    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("ledger-about-back", focused());

    tabTo(robot, "ledger-block-temp");
    robot.write("24");
    tabTo(robot, "ledger-amend-why");
    robot.write("misread");
    robot.type(KeyCode.TAB);
    robot.write("A. Turner");
    robot.type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();

    assertTrue(words(robot, "ledger-amend-done").startsWith("Amended, as entry"));
    robot.type(KeyCode.ESCAPE);
    assertEquals("ledger-entries", focused());
  }

  @Test
  void theAuditIsReachedAndReadByKeysAlone(FxRobot robot) {
    robot.interact(() -> model.part().set(LedgerPart.AUDIT));
    tabTo(robot, "ledger-audit");

    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();

    assertTrue(words(robot, "ledger-audit-saying").startsWith("Intact: "));
    tabTo(robot, "ledger-audit-lines");
    assertFalse(model.audit().lines().isEmpty());
  }

  @Test
  void twoSessionsAreChosenAndComparedByKeysAlone(FxRobot robot) throws Exception {
    robot.interact(
        () -> {
          try {
            at.house
                .around()
                .workshop()
                .set(
                    new Workshop(
                        LedgerStates.honed(Files.createDirectory(folder.resolve("honed")))
                            .ledger()));
          } catch (Exception e) {
            throw new AssertionError(e);
          }
          model.part().set(LedgerPart.COMPARE);
        });
    tabTo(robot, "ledger-compare-sessions");
    robot.type(KeyCode.DIGIT2, KeyCode.DOWN, KeyCode.DIGIT1);
    assertTrue(words(robot, "ledger-compare-before").contains("No. 7"));
    String after = words(robot, "ledger-compare-after");
    assertTrue(after.contains("No. 16"), after);

    robot.type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();

    assertEquals("ledger-changes", focused());
    assertTrue(words(robot, "ledger-changes-cautions").contains("torque plate on"));
    robot.type(KeyCode.ESCAPE);
    assertEquals("ledger-compare-sessions", focused());
  }

  @Test
  void everythingThatTakesTheFocusHasAName(FxRobot robot) {
    int named = 0;
    for (int i = 0; i < MOST_TABS; i++) {
      robot.type(KeyCode.TAB);
      Node node = stage.getScene().getFocusOwner();
      String name = node.getAccessibleText();
      if (name == null && node instanceof Labeled labeled) {
        name = labeled.getText();
      }
      assertTrue(name != null && !name.isBlank(), node.toString());
      named++;
    }
    assertEquals(MOST_TABS, named);
  }

  private void tabTo(FxRobot robot, String id) {
    for (int i = 0; i < MOST_TABS + 8 && !id.equals(focused()); i++) {
      robot.type(KeyCode.TAB);
    }
    assertEquals(id, focused());
  }

  private String focused() {
    WaitForAsyncUtils.waitForFxEvents();
    Node owner = stage.getScene().getFocusOwner();
    return owner == null ? null : owner.getId();
  }

  private static String words(FxRobot robot, String id) {
    return robot.lookup("#" + id).queryAs(Labeled.class).getText();
  }
}
