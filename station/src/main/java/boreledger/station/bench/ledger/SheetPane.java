package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.report.Paper;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;

/** The form that writes a build sheet. */
final class SheetPane extends Card {
  SheetPane(SheetModel model) {
    super(LedgerText.SHEET_NO_JOB.with());
    Label title = (Label) getChildren().get(0);
    model
        .job()
        .subscribe(
            job ->
                title.setText(
                    job.isEmpty()
                        ? LedgerText.SHEET_NO_JOB.with()
                        : LedgerText.SHEET_TITLE.with(job)));
    Label what = Words.label(null, Styles.MUTED);
    what.setText(LedgerText.SHEET_WHAT.with());
    TextField by = new TextField();
    by.setId("ledger-sheet-by");
    by.textProperty().bindBidirectional(model.by());
    Map<Paper, String> papers = new EnumMap<>(Paper.class);
    papers.put(Paper.A4, LedgerText.SHEET_A4.with());
    papers.put(Paper.LETTER, LedgerText.SHEET_LETTER.with());
    Label paper = Words.label(null, Styles.FIELD_NAME);
    paper.setText(LedgerText.SHEET_PAPER.with());
    Button write = new Button(LedgerText.SHEET_WRITE.with());
    write.setId("ledger-sheet-write");
    write.setOnAction(pressed -> model.write());
    write.disableProperty().bind(model.running());
    Label writing = Words.label(null, Styles.MUTED);
    writing.setText(LedgerText.SHEET_WRITING.with());
    getChildren()
        .addAll(
            what,
            new FilePart("ledger-sheet-file", model.file(), model.replace()),
            new Field(LedgerText.SHEET_BY.with(), by),
            paper,
            new Choice<>(papers, model.paper()),
            write,
            Showing.when(model.running(), writing),
            Showing.words("ledger-sheet-problem", model.problem(), Styles.PROBLEM),
            Showing.words("ledger-sheet-done", model.done()));
  }
}
