package boreledger.station.bench.gaps;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.Text;
import javafx.beans.binding.Bindings;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Filing in passes, and feeler leaves for the target. */
final class FilePane extends ScrollPane {
  FilePane(GapsModel model) {
    VBox both = new VBox(filing(model.filing()), feelers(model.feelers()));
    both.getStyleClass().add(Styles.FIELDS);
    setContent(both);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
  }

  private static Card filing(FilingBench filing) {
    Button add = button("add-pass", GapsText.ADD_PASS, filing::addPass);
    add.disableProperty().bind(filing.busy());
    Button drop = button("drop-pass", GapsText.DROP_PASS, filing::dropPass);
    drop.disableProperty()
        .bind(
            filing
                .busy()
                .or(
                    Bindings.createBooleanBinding(
                        () -> filing.page().get() == null || filing.page().get().filed().isEmpty(),
                        filing.page())));
    Label advice = Words.label("filing-advice", Styles.VERDICT_TITLE);
    Label record = Words.label("passes", Styles.MUTED);
    Label problem = bound("filing-problem", Styles.PROBLEM, filing.problem());
    problem.managedProperty().bind(problem.textProperty().isNotEmpty());
    record.managedProperty().bind(record.textProperty().isNotEmpty());
    Field after = new Field(gapAfter("mm"), typed("gap-after", filing.gapAfter(), filing::addPass));
    filing
        .page()
        .subscribe(
            page -> {
              advice.setText(page == null ? "" : page.advice());
              record.setText(page == null ? "" : String.join("\n", page.record()));
              after.rename(gapAfter(page == null ? "mm" : page.lengths().symbol()));
            });
    return new Card(
        GapsText.FILING.with(),
        advice,
        record,
        new Field(GapsText.TURNS.with(), typed("turns", filing.turns(), filing::addPass)),
        after,
        new Field(GapsText.WHO_FILES.with(), typed("filed-by", filing.who(), filing::addPass)),
        add,
        problem,
        new Field(GapsText.WHY_STRUCK.with(), typed("struck-why", filing.why(), filing::dropPass)),
        drop);
  }

  private static String gapAfter(String symbol) {
    return GapsText.GAP_AFTER.with(symbol);
  }

  private static Button button(String id, Text words, Runnable pressed) {
    Button button = new Button(words.with());
    button.setId(id);
    button.setOnAction(event -> pressed.run());
    return button;
  }

  private static TextField typed(String id, StringProperty text, Runnable entered) {
    TextField field = new TextField();
    field.setId(id);
    field.textProperty().bindBidirectional(text);
    field.setOnAction(event -> entered.run());
    return field;
  }

  private static Card feelers(Feelers feelers) {
    TextField leaves = new TextField();
    leaves.setId("leaves");
    leaves.textProperty().bindBidirectional(feelers.leaves());
    Field field = new Field(GapsText.LEAVES.with(feelers.lengths().get().symbol()), leaves);
    feelers.lengths().subscribe(shown -> field.rename(GapsText.LEAVES.with(shown.symbol())));
    return new Card(
        GapsText.FEELERS.with(), bound("stacks", Styles.VERDICT_WORDS, feelers.stacks()), field);
  }

  private static Label bound(String id, String style, ObservableValue<String> words) {
    Label label = Words.label(id, style);
    label.textProperty().bind(words);
    return label;
  }
}
