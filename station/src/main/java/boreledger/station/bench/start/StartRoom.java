package boreledger.station.bench.start;

import boreledger.station.bench.jobform.JobForm;
import boreledger.station.bench.lesson.LessonPane;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.FileWindows;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.StartText;
import boreledger.station.bench.words.WindowText;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Three cards, what is gauged, with what, and how, and the button that begins. */
public final class StartRoom {
  /** By which it is gone to. */
  public static final String ID = "start";

  private static final int CARDS = 3;

  private StartRoom() {}

  /** The room of a model, which asks for files by the system's own window. */
  public static Room of(StartModel model, Appearance appearance) {
    return of(model, appearance, new FileWindows());
  }

  /**
   * The room of a model.
   *
   * @param files asks for files
   */
  public static Room of(StartModel model, Appearance appearance, FileAsking files) {
    GridPane cards = new GridPane();
    cards.getStyleClass().add(Styles.CARDS);
    for (int i = 0; i < CARDS; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / CARDS);
      cards.getColumnConstraints().add(column);
    }
    cards.add(new JobPane(model.job(), model::practiseNow, files), 0, 0);
    cards.add(new MeasurePane(model.measuring()), 1, 0);
    cards.add(new GaugePane(model, files), 2, 0);
    ScrollPane scroll = new ScrollPane(cards);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox choosing =
        new VBox(
            Words.fixed(StartText.TITLE.with(), Styles.ROOM_TITLE), scroll, new BeginPane(model));
    choosing.getStyleClass().add(Styles.ROOM);
    StackPane view = new StackPane(choosing);
    view.setMinSize(0, 0);
    model.job().editing().subscribe(file -> edit(view, choosing, file, model, appearance, files));
    model.teaching().subscribe(on -> teach(view, choosing, on, model, files));
    return new Room(ID, WindowText.ROOM_START.with(), view, () -> entered(model));
  }

  private static void entered(StartModel model) {
    model.gauge().lookForPorts();
    model.going().look();
  }

  /** Shows the form of a job in place of the cards while one is edited. */
  private static void edit(
      StackPane view,
      Node choosing,
      Path file,
      StartModel model,
      Appearance appearance,
      FileAsking files) {
    if (file == null) {
      view.getChildren().setAll(choosing);
      return;
    }
    JobChoice job = model.job();
    JobForm form = new JobForm(file, job.tables(), appearance, files, job::saved, job::left);
    show(view, form);
    form.begin();
  }

  /** Shows a lesson in place of the cards while a gauge is taught. */
  private static void teach(
      StackPane view, Node choosing, boolean on, StartModel model, FileAsking files) {
    if (!on) {
      view.getChildren().setAll(choosing);
      return;
    }
    LessonPane lesson =
        new LessonPane(
            model.lesson(),
            new PortPane(model.gauge()),
            files,
            model.job()::folder,
            model::leftLesson);
    show(view, lesson);
    lesson.begin();
  }

  private static void show(StackPane view, Node node) {
    // Else the focus of the button that vanishes would wander through fields nobody came to.
    view.requestFocus();
    view.getChildren().setAll(node);
    view.applyCss();
    view.layout();
  }
}
