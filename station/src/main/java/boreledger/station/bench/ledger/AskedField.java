package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Control;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A field with what is wrong with it right beneath. */
final class AskedField extends VBox {
  AskedField(Text name, Control control, ObservableValue<String> problem) {
    getStyleClass().add(Styles.FIELD);
    getChildren()
        .addAll(
            new Field(name.with(), control),
            Showing.words(control.getId() + "-problem", problem, Styles.PROBLEM));
    setFillWidth(true);
    setMinWidth(0);
  }

  /** A field that is typed into, in which Enter does what the form is for. */
  static AskedField typed(
      Text name,
      String id,
      StringProperty text,
      ObservableValue<String> problem,
      Runnable entered) {
    TextField field = new TextField();
    field.setId(id);
    field.textProperty().bindBidirectional(text);
    field.setOnAction(pressed -> entered.run());
    return new AskedField(name, field, problem);
  }

  /** Why and who, beside each other. */
  static HBox reason(String prefix, Reason reason, Runnable entered) {
    AskedField why =
        typed(LedgerText.WHY, prefix + "why", reason.why(), reason.whyProblem(), entered);
    AskedField who =
        typed(LedgerText.WHO, prefix + "who", reason.who(), reason.whoProblem(), entered);
    return beside(why, who);
  }

  /** Fields beside each other, as wide as each other. */
  static HBox beside(AskedField... fields) {
    HBox row = new HBox(fields);
    row.getStyleClass().add(Styles.LEDGER_ASKED);
    for (AskedField each : fields) {
      each.setPrefWidth(1);
      HBox.setHgrow(each, Priority.ALWAYS);
    }
    return row;
  }
}
