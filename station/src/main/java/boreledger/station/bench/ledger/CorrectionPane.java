package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The form that takes a reading back or lets it count again. */
final class CorrectionPane extends Card {
  CorrectionPane(CorrectionModel model) {
    super(Text.LEDGER_CORRECT_TAKE_BACK.with());
    Label title = (Label) getChildren().get(0);
    Button button = new Button();
    button.setId("ledger-correct");
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(pressed -> model.correct());
    model
        .restores()
        .subscribe(
            again -> {
              Text words = again ? Text.LEDGER_CORRECT_RESTORE : Text.LEDGER_CORRECT_TAKE_BACK;
              title.setText(words.with());
              button.setText(words.with());
            });
    TextField why = field("ledger-why", model);
    why.textProperty().bindBidirectional(model.why());
    TextField who = field("ledger-who", model);
    who.textProperty().bindBidirectional(model.who());
    Field reason = new Field(Text.LEDGER_WHY.with(), why);
    Field person = new Field(Text.LEDGER_WHO.with(), who);
    HBox fields = new HBox(reason, person);
    fields.getStyleClass().add(Styles.LEDGER_HEAD);
    HBox.setHgrow(reason, Priority.ALWAYS);
    Label hint = Words.label(null, Styles.MUTED);
    hint.setText(Text.LEDGER_CORRECT_HINT.with());
    HBox foot = new HBox(button, hint);
    foot.getStyleClass().add(Styles.LEDGER_HEAD);
    HBox.setHgrow(hint, Priority.ALWAYS);
    getChildren()
        .addAll(
            fields,
            foot,
            Showing.words("ledger-correct-problem", model.problem(), Styles.PROBLEM),
            Showing.words("ledger-correct-done", model.done()));
  }

  private static TextField field(String id, CorrectionModel model) {
    TextField field = new TextField();
    field.setId(id);
    field.setOnAction(pressed -> model.correct());
    return field;
  }
}
