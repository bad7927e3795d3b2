package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.LedgerText;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;

/** A line of an audit's report, with its kind as a word and a sign. */
final class AuditCell extends ListCell<AuditLine> {
  private static final double SIGN_EM = 2.1;

  AuditCell() {
    getStyleClass().add(Styles.LEDGER_ROW);
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(AuditLine line, boolean empty) {
    super.updateItem(line, empty);
    setText(null);
    if (empty || line == null) {
      setGraphic(null);
      setAccessibleText(null);
      return;
    }
    String words = words(line);
    HBox row =
        new HBox(new Sign(kind(line)), Wrapped.words(this, words, SIGN_EM, Styles.LEDGER_WORDS));
    row.getStyleClass().add(Styles.LEDGER_SIGNED);
    setGraphic(row);
    setAccessibleText(words);
  }

  private static String words(AuditLine line) {
    return switch (line.kind()) {
      case FINDING -> LedgerText.KIND_FINDING.with(line.words());
      case NOTICE -> LedgerText.KIND_NOTICE.with(line.words());
      case FACT -> line.words();
    };
  }

  private static Sign.Kind kind(AuditLine line) {
    return switch (line.kind()) {
      case FINDING -> Sign.Kind.REFUSED;
      case NOTICE -> Sign.Kind.CAUTION;
      case FACT -> Sign.Kind.NONE;
    };
  }
}
