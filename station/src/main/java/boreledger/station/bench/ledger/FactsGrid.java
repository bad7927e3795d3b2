package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;

/** Facts under each other, the names in a column of their own. */
final class FactsGrid extends GridPane {
  private static final double NAMES_PERCENT = 36;

  FactsGrid() {
    getStyleClass().add(Styles.LEDGER_FACTS);
    ColumnConstraints names = new ColumnConstraints();
    names.setPercentWidth(NAMES_PERCENT);
    ColumnConstraints values = new ColumnConstraints();
    values.setPercentWidth(100 - NAMES_PERCENT);
    getColumnConstraints().addAll(names, values);
  }

  void show(List<Fact> facts) {
    getChildren().clear();
    for (int row = 0; row < facts.size(); row++) {
      Label name = Words.label(null, Styles.MUTED);
      name.setText(facts.get(row).name());
      Label value = Words.label(null);
      value.setText(facts.get(row).value());
      name.setLabelFor(value);
      setValignment(name, VPos.TOP);
      setValignment(value, VPos.TOP);
      addRow(row, name, value);
    }
  }
}
