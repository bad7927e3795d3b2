package boreledger.station.bench.window;

import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Heading;
import boreledger.station.bench.words.WindowText;
import java.util.List;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.stage.Stage;
import javafx.util.Duration;

/** The rooms on a stage. */
public final class StationWindow {
  private static final double LEAST_WIDTH_PX = 1024;
  private static final double LEAST_HEIGHT_PX = 700;
  private static final Duration TICK = Duration.millis(500);

  private final BenchModel model;
  private final Stage stage;
  private final StationScene scene;

  /** Puts the rooms on a stage, which is not shown yet. */
  public StationWindow(BenchModel model, List<Room> rooms, Appearance appearance, Stage stage) {
    this.model = model;
    this.stage = stage;
    scene =
        new StationScene(model, rooms, appearance, StationScene.WIDTH_PX, StationScene.HEIGHT_PX);
    stage.setScene(scene);
    stage.setFullScreenExitHint("");
    appearance.full().subscribe(full -> stage.setFullScreen(full));
    stage.fullScreenProperty().subscribe(full -> appearance.full().set(full));
    stage.setMinWidth(LEAST_WIDTH_PX);
    stage.setMinHeight(LEAST_HEIGHT_PX);
    model.shown().heading().subscribe(this::entitle);
  }

  /** Goes to the room of an id, if there is one. */
  public void go(String id) {
    scene.go(id);
  }

  /** Shows the window and keeps the ages on it true until it is closed. */
  public void show() {
    Timeline ticking = new Timeline(new KeyFrame(TICK, tick -> model.tick()));
    ticking.setCycleCount(Animation.INDEFINITE);
    stage.setOnHidden(hidden -> ticking.stop());
    ticking.play();
    stage.show();
    // No button is armed before a person reaches for one.
    stage.getScene().getRoot().requestFocus();
  }

  private void entitle(Heading heading) {
    stage.setTitle(
        heading.job().isEmpty()
            ? WindowText.PROGRAM.with()
            : WindowText.WINDOW_TITLE.with(heading.job(), heading.gauged()));
  }
}
