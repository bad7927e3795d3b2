package boreledger.station.bench.gaps;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
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
    TextField turns = new TextField();
    turns.setId("turns");
    turns.textProperty().bindBidirectional(filing.turns());
    TextField gap = new TextField();
    gap.setId("gap-after");
    gap.textProperty().bindBidirectional(filing.gapAfter());
    gap.setOnAction(entered -> filing.addPass());
    Button add = new Button(Text.GAPS_ADD_PASS.with());
    add.setId("add-pass");
    add.setOnAction(pressed -> filing.addPass());
    Button drop = new Button(Text.GAPS_DROP_PASS.with());
    drop.setId("drop-pass");
    drop.setOnAction(pressed -> filing.dropPass());
    FlowPane buttons = new FlowPane(add, drop);
    buttons.getStyleClass().add(Styles.CHOICES);
    return new Card(
        Text.GAPS_FILING.with(),
        bound("filing-advice", Styles.VERDICT_TITLE, filing.advice()),
        bound("passes", Styles.MUTED, filing.record()),
        new Field(Text.GAPS_TURNS.with(), turns),
        new Field(Text.GAPS_GAP_AFTER.with(), gap),
        buttons);
  }

  private static Card feelers(Feelers feelers) {
    TextField leaves = new TextField();
    leaves.setId("leaves");
    leaves.textProperty().bindBidirectional(feelers.leaves());
    return new Card(
        Text.GAPS_FEELERS.with(),
        bound("stacks", Styles.VERDICT_WORDS, feelers.stacks()),
        new Field(Text.GAPS_LEAVES.with(), leaves));
  }

  private static Label bound(String id, String style, ObservableValue<String> words) {
    Label label = Words.label(id, style);
    label.textProperty().bind(words);
    return label;
  }
}
