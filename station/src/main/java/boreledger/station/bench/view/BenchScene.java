package boreledger.station.bench.view;

import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Text;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Rail and desk, the keys, and one font size that fits everything to the window. */
final class BenchScene extends Scene {
  static final double WIDTH_PX = 1280;
  static final double HEIGHT_PX = 800;

  private static final double FONT_PX = 15;
  private static final double LEAST_FONT_PX = 12;
  private static final String STYLE = "/boreledger/station/bench/bench.css";

  private final BenchModel model;
  private final HBox root = new HBox();
  private final BooleanProperty bright = new SimpleBooleanProperty(false);
  private final BooleanProperty full = new SimpleBooleanProperty(false);

  BenchScene(BenchModel model, double width, double height) {
    super(new HBox(), width, height);
    this.model = model;
    setRoot(root);
    Desk desk = new Desk(model);
    HBox.setHgrow(desk, Priority.ALWAYS);
    Rail.Room bench = new Rail.Room(Text.ROOM_BENCH.with(), desk);
    ObjectProperty<Rail.Room> shown = new SimpleObjectProperty<>(bench);
    root.getChildren().addAll(new Rail(List.of(bench), shown, switches()), desk);
    shown.subscribe(room -> root.getChildren().set(1, room.view()));
    getStylesheets().add(BenchScene.class.getResource(STYLE).toExternalForm());
    widthProperty().addListener(changed -> fit());
    heightProperty().addListener(changed -> fit());
    fit();
    bright.subscribe(this::light);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /** Whether the bright colours are on. */
  BooleanProperty brightProperty() {
    return bright;
  }

  /** Whether the whole screen is wanted; the window that shows this scene heeds it. */
  BooleanProperty fullProperty() {
    return full;
  }

  private List<ToggleButton> switches() {
    return List.of(
        Switch.of("sound", Text.SOUND_ON, Text.SOUND_OFF, model.mutedProperty()),
        Switch.of("light", Text.LIGHT_DARK, Text.LIGHT_BRIGHT, bright),
        Switch.of("screen", Text.SCREEN_WINDOW, Text.SCREEN_FULL, full));
  }

  private void pressed(KeyEvent event) {
    switch (event.getCode()) {
      case T -> model.confirmHeld();
      case L -> model.leaveHeld();
      case M -> model.mutedProperty().set(!model.mutedProperty().get());
      case B -> bright.set(!bright.get());
      case F11 -> full.set(!full.get());
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void light(boolean isBright) {
    root.getStyleClass().remove(Styles.BRIGHT);
    if (isBright) {
      root.getStyleClass().add(Styles.BRIGHT);
    }
  }

  private void fit() {
    double share = Math.min(getWidth() / WIDTH_PX, getHeight() / HEIGHT_PX);
    double px = Math.max(LEAST_FONT_PX, FONT_PX * share);
    root.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.2fpx", px));
  }
}
