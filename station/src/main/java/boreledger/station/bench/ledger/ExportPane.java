package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** The form that hands out readings or the chain. */
final class ExportPane extends Card {
  ExportPane(ExportModel model) {
    super(LedgerText.EXPORT_TITLE.with());
    Label what = Words.label(null, Styles.MUTED);
    what.setText(LedgerText.EXPORT_WHAT.with());
    Map<ExportKind, String> kinds = new EnumMap<>(ExportKind.class);
    kinds.put(ExportKind.SESSION, LedgerText.EXPORT_SESSION.with());
    kinds.put(ExportKind.READINGS, LedgerText.EXPORT_READINGS.with());
    kinds.put(ExportKind.CHAIN, LedgerText.EXPORT_CHAIN.with());
    Button write = new Button(LedgerText.EXPORT_WRITE.with());
    write.setId("ledger-export");
    write.setOnAction(pressed -> model.write());
    write.disableProperty().bind(model.running());
    Button stop = new Button(LedgerText.AUDIT_STOP.with());
    stop.setId("ledger-export-stop");
    stop.setOnAction(pressed -> model.stop());
    HBox buttons = new HBox(write, Showing.when(model.running(), stop));
    buttons.getStyleClass().add(Styles.LEDGER_HEAD);
    getChildren()
        .addAll(
            what,
            new Choice<>(kinds, model.kind()),
            new FilePart("ledger-export-file", model.file(), model.replace()),
            buttons,
            Showing.words("ledger-export-problem", model.problem(), Styles.PROBLEM),
            Showing.words("ledger-export-saying", model.saying()));
  }
}
