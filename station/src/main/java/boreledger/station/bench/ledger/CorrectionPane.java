package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import boreledger.station.plan.Position;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.StringConverter;

/** The form that takes a reading back, lets it count again or moves it. */
final class CorrectionPane extends Card {
  CorrectionPane(CorrectionModel model, ReadOnlyObjectProperty<EntryWords> words) {
    super(LedgerText.CORRECT_TITLE.with());
    Button button = button("ledger-correct", model::correct);
    model
        .restores()
        .subscribe(
            again ->
                button.setText(
                    (again ? LedgerText.CORRECT_RESTORE : LedgerText.CORRECT_TAKE_BACK).with()));
    HBox foot = new HBox(button, muted(LedgerText.CORRECT_HINT));
    foot.getStyleClass().add(Styles.LEDGER_HEAD);
    HBox.setHgrow(foot.getChildren().get(1), Priority.ALWAYS);
    getChildren()
        .addAll(
            AskedField.reason("ledger-", model.reason(), model::correct),
            foot,
            Showing.when(Bindings.isNotEmpty(model.places()), moving(model, words)),
            Showing.when(model.nowhere(), muted(LedgerText.MOVE_NOWHERE)),
            Showing.words("ledger-correct-problem", model.problem(), Styles.PROBLEM),
            Showing.words("ledger-correct-done", model.done()));
  }

  private static Node moving(CorrectionModel model, ReadOnlyObjectProperty<EntryWords> words) {
    ComboBox<Position> places = new ComboBox<>(model.places());
    places.setId("ledger-place");
    places.valueProperty().bindBidirectional(model.place());
    words.subscribe(spoken -> places.setConverter(new PlaceConverter(spoken)));
    AskedField place = new AskedField(LedgerText.MOVE_TO, places, model.placeProblem());
    HBox.setHgrow(place, Priority.ALWAYS);
    Button move = button("ledger-move", model::move);
    move.setText(LedgerText.MOVE.with());
    HBox row = new HBox(place, move);
    row.getStyleClass().add(Styles.LEDGER_FILE);
    return row;
  }

  private static Button button(String id, Runnable pressed) {
    Button button = new Button();
    button.setId(id);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> pressed.run());
    return button;
  }

  private static Label muted(Text words) {
    Label label = Words.label(null, Styles.MUTED);
    label.setText(words.with());
    return label;
  }

  private static final class PlaceConverter extends StringConverter<Position> {
    private final EntryWords words;

    PlaceConverter(EntryWords words) {
      this.words = words;
    }

    @Override
    public String toString(Position place) {
      return place == null || words == null ? "" : words.place(place);
    }

    @Override
    public Position fromString(String typed) {
      throw new UnsupportedOperationException("places are chosen, not typed");
    }
  }
}
