package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Trace;
import boreledger.station.bench.model.Trace.Point;
import boreledger.station.bench.words.BenchText;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;

/** The rocking trace, with the smallest value so far marked. */
final class TracePane extends VBox {
  private final Label words = Words.label("trace-words", Styles.TRACE_WORDS);
  private final Pane plot = new Pane();
  private final Polyline line = new Polyline();
  private final Line level = new Line();
  private final Circle smallest = new Circle();
  private Trace trace;

  TracePane(ObservableValue<Trace> traces) {
    setId("trace");
    getStyleClass().add(Styles.TRACE);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    line.getStyleClass().add(Styles.TRACE_LINE);
    level.getStyleClass().add(Styles.TRACE_LEVEL);
    smallest.getStyleClass().add(Styles.TRACE_SMALLEST);
    plot.getChildren().addAll(level, line, smallest);
    plot.getChildren().forEach(each -> each.setManaged(false));
    plot.setMinHeight(0);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(plot.widthProperty());
    clip.heightProperty().bind(plot.heightProperty());
    plot.setClip(clip);
    VBox.setVgrow(plot, Priority.ALWAYS);
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    Label span = Words.fixed(BenchText.TRACE_SPAN.with(), Styles.MUTED);
    getChildren().addAll(new HBox(words, between, span), plot);
    plot.widthProperty().addListener(changed -> draw());
    plot.heightProperty().addListener(changed -> draw());
    traces.subscribe(this::show);
  }

  private void show(Trace newTrace) {
    trace = newTrace;
    setVisible(trace != null);
    setManaged(trace != null);
    if (trace != null) {
      words.setText(trace.words());
      setAccessibleText(BenchText.TRACE_ACCESSIBLE.with(trace.words()));
      draw();
    }
  }

  private void draw() {
    if (trace == null) {
      return;
    }
    Double[] coordinates = new Double[2 * trace.points().size()];
    for (int i = 0; i < trace.points().size(); i++) {
      coordinates[2 * i] = x(trace.points().get(i));
      coordinates[2 * i + 1] = y(trace.points().get(i));
    }
    line.getPoints().setAll(coordinates);
    Point mark = trace.smallest();
    smallest.setVisible(mark != null);
    level.setVisible(mark != null);
    if (mark != null) {
      smallest.setCenterX(x(mark));
      smallest.setCenterY(y(mark));
      smallest.setRadius(Math.max(4, plot.getHeight() / 18));
      level.setStartX(0);
      level.setEndX(plot.getWidth());
      level.setStartY(y(mark));
      level.setEndY(y(mark));
    }
  }

  private double x(Point point) {
    return plot.getWidth() * (point.tS() - trace.fromS()) / trace.spanS();
  }

  private double y(Point point) {
    double share = (point.valueMm() - trace.lowMm()) / (trace.highMm() - trace.lowMm());
    return plot.getHeight() * (1 - share);
  }
}
