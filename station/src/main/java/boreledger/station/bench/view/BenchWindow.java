package boreledger.station.bench.view;

import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Heading;
import boreledger.station.bench.model.Text;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.stage.Stage;
import javafx.util.Duration;

/** The bench of a model on a stage. */
public final class BenchWindow {
  private static final double LEAST_WIDTH_PX = 1024;
  private static final double LEAST_HEIGHT_PX = 700;
  private static final Duration TICK = Duration.millis(500);

  private final BenchModel model;
  private final Stage stage;

  /** Puts the bench on a stage, which is not shown yet. */
  public BenchWindow(BenchModel model, Stage stage) {
    this.model = model;
    this.stage = stage;
    BenchScene scene = new BenchScene(model, BenchScene.WIDTH_PX, BenchScene.HEIGHT_PX);
    stage.setScene(scene);
    stage.setFullScreenExitHint("");
    scene.fullProperty().subscribe(full -> stage.setFullScreen(full));
    stage.fullScreenProperty().subscribe(full -> scene.fullProperty().set(full));
    stage.setMinWidth(LEAST_WIDTH_PX);
    stage.setMinHeight(LEAST_HEIGHT_PX);
    model.shown().heading().subscribe(this::entitle);
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
            ? Text.PROGRAM.with()
            : Text.WINDOW_TITLE.with(heading.job(), heading.gauged()));
  }
}
