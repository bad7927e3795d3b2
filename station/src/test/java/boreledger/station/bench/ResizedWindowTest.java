package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.bench.gaps.GapsStates;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Words grow with the window, those with a size of their own in step with the others. */
@ExtendWith(ApplicationExtension.class)
class ResizedWindowTest {
  private static final double ROUNDING_PX = 0.01;

  @TempDir Path folder;
  private Stage stage;

  @Start
  private void open(Stage newStage) throws Exception {
    stage = newStage;
    House house = House.gauged(folder, "bore-rocked", "gap-top");
    stage.setScene(RoomPictures.scene(house, GapsStates.filedAndSupposed(house), 1024, 700));
    stage.show();
  }

  @Test
  void wordsWithASizeOfTheirOwnKeepTheirProportion(FxRobot robot) {
    double small = px(robot, "gaps-title");
    double before = small / px(robot, "what-if-holding");

    robot.interact(
        () -> {
          stage.setWidth(3840);
          stage.setHeight(2160);
        });
    WaitForAsyncUtils.waitForFxEvents();

    assertEquals(before, px(robot, "gaps-title") / px(robot, "what-if-holding"), ROUNDING_PX);
    assertEquals(2.5, px(robot, "gaps-title") / small, 0.7);
  }

  private static double px(FxRobot robot, String id) {
    return robot.lookup("#" + id).queryAs(Label.class).getFont().getSize();
  }
}
