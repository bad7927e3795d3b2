package boreledger.station.bench.view;

import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Shown;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The bench room: where each pane stands. */
final class Desk extends VBox {
  private static final double[] WIDTHS_PERCENT = {58, 16, 26};
  private static final double[] HEIGHTS_PERCENT = {36, 64};
  private static final double TRACE_SHARE = 0.27;
  private static final double LEAST_TRACE_SHARE = 0.18;

  private final HandsPane hands;

  Desk(BenchModel model, KeyChoices keys) {
    getStyleClass().add(Styles.DESK);
    Shown shown = model.shown();
    hands = new HandsPane(model, keys);
    GridPane middle = middle(model);
    VBox.setVgrow(middle, Priority.ALWAYS);
    SayingPane saying = new SayingPane(shown.saying());
    QuestionPane question = new QuestionPane(model, keys);
    saying.visibleProperty().bind(question.visibleProperty().not());
    getChildren()
        .addAll(
            new HeadPane(shown.heading()),
            middle,
            new StackPane(saying, question),
            hands,
            new NoticePane(shown),
            new ProgressPane(shown.progress()),
            new LinePane(shown.line()));
  }

  /** Takes a key that was pressed in this room; whether it was used. */
  boolean take(KeyEvent event) {
    return hands.take(event);
  }

  private static GridPane middle(BenchModel model) {
    Shown shown = model.shown();
    GridPane middle = new GridPane();
    for (double percent : WIDTHS_PERCENT) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      middle.getColumnConstraints().add(column);
    }
    for (double percent : HEIGHTS_PERCENT) {
      RowConstraints row = new RowConstraints();
      row.setPercentHeight(percent);
      middle.getRowConstraints().add(row);
    }
    middle.setMinHeight(0);
    middle.getStyleClass().add(Styles.DESK_MIDDLE);
    middle.add(left(shown), 0, 0, 1, 2);
    middle.add(new BlockPane(shown.block(), model::goTo), 1, 0, 2, 1);
    middle.add(new SectionPane(shown.section()), 1, 1);
    middle.add(new GridView(shown.grid(), model::goTo), 2, 1);
    return middle;
  }

  private static Node left(Shown shown) {
    LivePane live = new LivePane(shown.live());
    VBox.setVgrow(live, Priority.ALWAYS);
    TracePane trace = new TracePane(shown.trace());
    VBox gauging = new VBox(new PlacePane(shown.place()), live, trace);
    trace.prefHeightProperty().bind(gauging.heightProperty().multiply(TRACE_SHARE));
    trace.minHeightProperty().bind(gauging.heightProperty().multiply(LEAST_TRACE_SHARE));
    ClosingPane closing = new ClosingPane(shown.closing());
    closing.visibleProperty().bind(shown.closing().isNotNull());
    gauging.visibleProperty().bind(shown.closing().isNull());
    StackPane left = new StackPane(gauging, closing);
    left.setMinHeight(0);
    return left;
  }
}
