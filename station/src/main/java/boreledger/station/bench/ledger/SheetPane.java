package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import boreledger.station.report.Paper;
import java.io.File;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.stage.FileChooser;

/** The form that writes a build sheet. */
final class SheetPane extends Card {
  private final SheetModel model;

  SheetPane(SheetModel model) {
    super(Text.LEDGER_SHEET_NO_JOB.with());
    this.model = model;
    Label title = (Label) getChildren().get(0);
    model
        .job()
        .subscribe(
            job ->
                title.setText(
                    job.isEmpty()
                        ? Text.LEDGER_SHEET_NO_JOB.with()
                        : Text.LEDGER_SHEET_TITLE.with(job)));
    Label what = Words.label(null, Styles.MUTED);
    what.setText(Text.LEDGER_SHEET_WHAT.with());
    TextField by = new TextField();
    by.setId("ledger-sheet-by");
    by.textProperty().bindBidirectional(model.by());
    Map<Paper, String> papers = new EnumMap<>(Paper.class);
    papers.put(Paper.A4, Text.LEDGER_SHEET_A4.with());
    papers.put(Paper.LETTER, Text.LEDGER_SHEET_LETTER.with());
    Label paper = Words.label(null, Styles.FIELD_NAME);
    paper.setText(Text.LEDGER_SHEET_PAPER.with());
    Map<Boolean, String> replacing = new LinkedHashMap<>();
    replacing.put(false, Text.LEDGER_SHEET_KEEP.with());
    replacing.put(true, Text.LEDGER_SHEET_REPLACE.with());
    Button write = new Button(Text.LEDGER_SHEET_WRITE.with());
    write.setId("ledger-sheet-write");
    write.setOnAction(pressed -> model.write());
    write.disableProperty().bind(model.running());
    Label writing = Words.label(null, Styles.MUTED);
    writing.setText(Text.LEDGER_SHEET_WRITING.with());
    getChildren()
        .addAll(
            what,
            file(),
            new Choice<>(replacing, model.replace().asObject()),
            new Field(Text.LEDGER_SHEET_BY.with(), by),
            paper,
            new Choice<>(papers, model.paper()),
            write,
            Showing.when(model.running(), writing),
            Showing.words("ledger-sheet-problem", model.problem(), Styles.PROBLEM),
            Showing.words("ledger-sheet-done", model.done()));
  }

  private HBox file() {
    TextField file = new TextField();
    file.setId("ledger-sheet-file");
    file.textProperty().bindBidirectional(model.file());
    Field field = new Field(Text.LEDGER_SHEET_FILE.with(), file);
    HBox.setHgrow(field, Priority.ALWAYS);
    Button choose = new Button(Text.LEDGER_SHEET_CHOOSE.with());
    choose.setId("ledger-sheet-choose");
    choose.setMinWidth(USE_PREF_SIZE);
    choose.setOnAction(pressed -> choose());
    HBox row = new HBox(field, choose);
    row.getStyleClass().add(Styles.LEDGER_FILE);
    return row;
  }

  private void choose() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(Text.LEDGER_SHEET_CHOOSE.with());
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(Text.LEDGER_SHEET_FILES.with(), "*.pdf"));
    Path proposed = Path.of(model.file().get());
    chooser.setInitialFileName(
        proposed.getFileName() == null ? "" : proposed.getFileName().toString());
    File chosen = chooser.showSaveDialog(getScene().getWindow());
    if (chosen != null) {
      // The dialogue has asked already whether to write over it.
      model.file().set(chosen.toString());
      model.replace().set(chosen.exists());
    }
  }
}
