package boreledger.station.bench.findings;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import java.util.List;
import javafx.beans.binding.BooleanExpression;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What every room of findings looks like: a head, a page or why there is none, and a caution. */
public final class FindingsView extends VBox {
  /**
   * A room's view.
   *
   * @param id what the ids of its labels begin with
   * @param head what stands above the page
   * @param page what is shown once something was gauged
   * @param found whether something was
   * @param nothing what is said until then
   * @param defers whose data decide
   */
  public FindingsView(
      String id,
      List<? extends Node> head,
      GridPane page,
      Findings findings,
      BooleanExpression found,
      String nothing,
      String defers) {
    Label empty = Words.label(id + "-nothing", Styles.ROOM_HINT);
    empty.setText(nothing);
    empty.visibleProperty().bind(found.not());
    page.visibleProperty().bind(found);
    StackPane content = new StackPane(empty, page);
    content.setMinHeight(0);
    setVgrow(content, Priority.ALWAYS);
    Label fault = Words.label(id + "-fault", Styles.PROBLEM);
    fault.textProperty().bind(findings.fault());
    fault.managedProperty().bind(fault.textProperty().isNotEmpty());
    Label caution = Words.label(id + "-defers", Styles.DEFERS);
    caution.setText(defers);
    getChildren().addAll(head);
    getChildren().addAll(fault, content, caution);
    getStyleClass().add(Styles.ROOM);
  }

  /** An empty page whose columns and rows keep to shares of it, in percent. */
  public static GridPane page(double[] widthsPercent, double[] heightsPercent) {
    GridPane page = new GridPane();
    page.getStyleClass().add(Styles.CARDS);
    for (double percent : widthsPercent) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      page.getColumnConstraints().add(column);
    }
    for (double percent : heightsPercent) {
      RowConstraints row = new RowConstraints();
      row.setPercentHeight(percent);
      page.getRowConstraints().add(row);
    }
    return page;
  }
}
