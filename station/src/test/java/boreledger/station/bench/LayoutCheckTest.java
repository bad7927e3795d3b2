package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

class LayoutCheckTest {
  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @Test
  void wordsThatAPaneHasNoRoomForAreFound() throws Exception {
    List<String> faults =
        WaitForAsyncUtils.asyncFx(
                () -> {
                  VBox low = new VBox(new Label("Taper"), new Label("Out of round"));
                  low.setMinHeight(20);
                  low.setMaxHeight(20);
                  low.setId("low");
                  Scene scene = new Scene(new Pane(low), 300, 100);
                  scene.getRoot().applyCss();
                  scene.getRoot().layout();
                  return LayoutCheck.closely(scene).faults();
                })
            .get();

    assertEquals(List.of("sticks out of VBox low: Label null \"Out of round\""), faults);
  }

  @ParameterizedTest
  @CsvSource({
    "250, 40, ''",
    "250, 9, too low",
    "60, 40, cut off",
    "390, 40, 'outside the window, sticks out of Pane null'",
  })
  void wordsThatDoNotShowAreFound(double widthPx, double heightPx, String fault) throws Exception {
    List<String> faults =
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Label label = new Label("Taper over the stroke");
                  label.setMinSize(widthPx, heightPx);
                  label.setMaxSize(widthPx, heightPx);
                  Scene scene = new Scene(new Pane(label), 300, 100);
                  scene.getRoot().applyCss();
                  scene.getRoot().layout();
                  return LayoutCheck.closely(scene).faults();
                })
            .get();

    List<String> kinds = faults.stream().map(each -> each.replaceFirst(":.*", "")).toList();
    assertEquals(fault, String.join(", ", kinds));
  }
}
