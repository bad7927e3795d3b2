package boreledger.station.bench.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.ChosenFile;
import boreledger.station.bench.House;
import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.memory.Memory;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The room in a window. */
class StartRoomTest {
  @TempDir Path folder;
  private final FxRobot robot = new FxRobot();
  private final FakeStart program = new FakeStart();
  private final ChosenFile files = new ChosenFile();
  private StartModel model;
  private Stage stage;

  @BeforeEach
  void aFirstDay() throws Exception {
    stage = FxToolkit.registerPrimaryStage();
    House house = House.empty(folder);
    robot.interact(
        () -> {
          model = new StartModel(program, house.around(), new Memory(null), "bench", 1);
          stage.setScene(
              RoomPictures.scene(house, StartRoom.of(model, house.appearance(), files), 1280, 800));
          stage.show();
        });
  }

  @AfterEach
  void closeIt() throws Exception {
    FxToolkit.cleanupStages();
    FxToolkit.hideStage();
  }

  @Test
  void anOpenedJobShowsItsEngineAndIsSearchedForInTheFolderOfTheLast() throws Exception {
    assertFalse(node("start-engine").isVisible());
    files.chosen =
        Files.copy(
            House.SAMPLES.resolve("pumphouse-three.job.toml"), folder.resolve("my.job.toml"));

    press("open-job");
    press("open-job");

    assertTrue(node("start-engine").isVisible());
    assertEquals(
        "An engine of 3 cylinders, in line, from the end and from above",
        node("start-engine").getAccessibleText());
    assertEquals(folder.toAbsolutePath(), files.asked.get(1).folder());
    assertEquals(".job.toml", files.asked.get(1).ending());
  }

  @Test
  void aNewJobIsNotToldOfFieldsThatNobodyCameTo() {
    press("new-job");
    assertEquals("name", stage.getScene().getFocusOwner().getId());

    robot.write("Mill", 0);
    robot.type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();

    assertTrue(words("form-state").startsWith("Still needed"), words("form-state"));
  }

  @Test
  void whatIsGaugedIsStoppedByAButtonThatIsThereOnlyMeanwhile() {
    assertFalse(node("stop-gauging").isVisible());
    program.gauging = true;
    robot.interact(() -> model.going().look());
    assertTrue(node("stop-gauging").isVisible());

    press("stop-gauging");

    assertFalse(program.gauging);
    assertFalse(node("stop-gauging").isVisible());
  }

  @Test
  void aChosenProfileComesFromItsFile() {
    robot.interact(() -> model.gauge().practising().set(false));
    files.chosen = folder.resolve("mine.gauge.toml");

    robot.interact(() -> robot.lookup("Profile from a file\u2026").queryAs(Hyperlink.class).fire());

    assertEquals(files.chosen, model.gauge().profile().get().gauge());
  }

  private void press(String id) {
    robot.interact(() -> ((Button) node(id)).requestFocus());
    robot.interact(() -> ((Button) node(id)).fire());
    WaitForAsyncUtils.waitForFxEvents();
  }

  private Node node(String id) {
    return stage.getScene().lookup("#" + id);
  }

  private String words(String id) {
    return ((Labeled) node(id)).getText();
  }
}
