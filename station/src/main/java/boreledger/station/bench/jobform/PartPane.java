package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.Place;
import boreledger.station.job.draft.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The fields of a section, or of one of several; what few jobs need is folded away. */
final class PartPane extends VBox {
  private static final int COLUMNS = 2;
  private static final double WHOLE_PERCENT = 100;

  private final FormModel model;
  private final List<FieldCell> cells = new ArrayList<>();
  private final List<FieldCell> folded = new ArrayList<>();
  private final GridPane more = new GridPane();
  private final Button fold = new Button();
  private boolean isOpen;

  PartPane(FormModel model, Choices choices, Section section, int index) {
    this.model = model;
    getStyleClass().add(Styles.FORM_PART);
    GridPane shown = new GridPane();
    Groups.shown(section).forEach(field -> cells.add(cell(choices, field, index)));
    Groups.folded(section).forEach(field -> folded.add(cell(choices, field, index)));
    if (!cells.isEmpty()) {
      getChildren().add(shown);
    }
    arrange(shown, cells);
    arrange(more, folded);
    cells.addAll(folded);
    if (!folded.isEmpty()) {
      fold.setId("more-" + FieldCell.idOf(folded.get(0).place()));
      fold.getStyleClass().setAll(Styles.FORM_FOLD);
      fold.setWrapText(true);
      fold.setMinHeight(Region.USE_PREF_SIZE);
      fold.setOnAction(pressed -> turn());
      getChildren().addAll(fold, more);
    }
    refresh();
  }

  List<FieldCell> cells() {
    return cells;
  }

  /** The button that unfolds the rest. */
  Node fold() {
    return fold;
  }

  void refresh() {
    cells.forEach(FieldCell::refresh);
    boolean isNeeded = folded.stream().anyMatch(this::hasSomething);
    boolean isShown = isOpen || isNeeded;
    more.setVisible(isShown);
    more.setManaged(isShown);
    fold.setVisible(!isNeeded);
    fold.setManaged(!isNeeded);
    fold.setText(isOpen ? JobFormText.LESS.with() : JobFormText.MORE.with(names()));
  }

  private FieldCell cell(Choices choices, Field field, int index) {
    return new FieldCell(model, choices, new Place(field, index));
  }

  private boolean hasSomething(FieldCell cell) {
    return !model.draft().text(cell.place()).isEmpty() || model.problem(cell.place()).isPresent();
  }

  private void turn() {
    isOpen = !isOpen;
    refresh();
    if (isOpen) {
      folded.get(0).input().stops().get(0).requestFocus();
    }
  }

  private String names() {
    return folded.stream()
        .map(cell -> FieldWords.of(cell.place().field()).label().with())
        .collect(Collectors.joining(", "));
  }

  private static void arrange(GridPane grid, List<FieldCell> cells) {
    grid.getStyleClass().add(Styles.FORM_GRID);
    for (int column = 0; column < COLUMNS; column++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(WHOLE_PERCENT / COLUMNS);
      half.setHgrow(Priority.ALWAYS);
      grid.getColumnConstraints().add(half);
    }
    int at = 0;
    for (FieldCell cell : cells) {
      boolean beginsRow = Groups.beginsRow(cell.place().field());
      at += beginsRow ? at % COLUMNS : 0;
      grid.add(cell, at % COLUMNS, at / COLUMNS);
      GridPane.setValignment(cell, VPos.TOP);
      at++;
    }
  }
}
