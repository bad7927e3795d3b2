package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Styles;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;

/** A sample with its bytes, in hexadecimal and as far as printable. */
final class SampleCell extends ListCell<ReadingFacts.SampleWords> {
  SampleCell() {
    getStyleClass().add(Styles.LEDGER_ROW);
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(ReadingFacts.SampleWords sample, boolean empty) {
    super.updateItem(sample, empty);
    setText(null);
    if (empty || sample == null) {
      setGraphic(null);
      setAccessibleText(null);
      return;
    }
    String decoded = sample.value() + "  " + sample.when();
    setGraphic(
        new VBox(
            Wrapped.words(this, decoded, 0, Styles.LEDGER_WORDS),
            Wrapped.words(this, sample.hex(), 0, Styles.LEDGER_WORDS, Styles.LEDGER_BYTES),
            Wrapped.words(this, sample.printable(), 0, Styles.LEDGER_WORDS, Styles.LEDGER_BYTES)));
    setAccessibleText(String.join(", ", decoded, sample.hex(), sample.printable()));
  }
}
