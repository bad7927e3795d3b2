package boreledger.station.bench.lesson;

import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LessonText;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A gauge being taught, on the whole room: what to show it, what arrives, what is known. */
public final class LessonPane extends VBox {
  private static final double HALF_PERCENT = 50;

  private final TeachPane teach;
  private final Runnable leaving;
  private final LessonModel model;

  /**
   * A pane.
   *
   * @param ports where a port is chosen
   * @param files asks for files
   * @param folder where the profile is offered, asked when it is needed
   * @param leaving called when a person leaves
   */
  public LessonPane(
      LessonModel model, Node ports, FileAsking files, Supplier<Path> folder, Runnable leaving) {
    this.model = model;
    this.leaving = leaving;
    setId("lesson");
    setMinSize(0, 0);
    getStyleClass().add(Styles.ROOM);
    teach = new TeachPane(model, ports, files, folder);
    VBox left = new VBox(teach, new KeepPane(model, files, folder));
    left.getStyleClass().add(Styles.LESSON_COLUMN);
    GridPane columns = new GridPane();
    columns.getStyleClass().add(Styles.CARDS);
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(HALF_PERCENT);
      columns.getColumnConstraints().add(half);
    }
    columns.add(left, 0, 0);
    columns.add(new HeardPane(model), 1, 0);
    ScrollPane scroll = new ScrollPane(columns);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(Words.fixed(LessonText.TITLE.with(), Styles.ROOM_TITLE), scroll, foot());
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /** Puts the focus where a person begins; called once the pane is in the window. */
  public void begin() {
    teach.begin();
  }

  private Node foot() {
    Label intro = Words.label("lesson-intro", Styles.MUTED);
    intro.setText(LessonText.INTRO.with());
    intro.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(intro, Priority.ALWAYS);
    Button leave = new Button(LessonText.LEAVE.with());
    leave.setId("lesson-leave");
    leave.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    leave.setOnAction(pressed -> leave());
    HBox foot = new HBox(intro, leave);
    foot.getStyleClass().add(Styles.FOOT);
    return foot;
  }

  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      event.consume();
      leave();
    }
  }

  private void leave() {
    model.stop();
    leaving.run();
  }
}
