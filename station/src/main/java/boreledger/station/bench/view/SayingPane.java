package boreledger.station.bench.view;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Saying;
import boreledger.station.bench.words.WindowText;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What happened last, with its cautions. */
final class SayingPane extends VBox {
  private final Sign sign = new Sign(Sign.Kind.NONE);
  private final Label words = Words.label("saying", Styles.SAYING_WORDS);
  private final VBox cautions = new VBox();

  SayingPane(ObservableValue<Saying> sayings) {
    getStyleClass().add(Styles.SAYING);
    cautions.setId("cautions");
    setAccessibleRole(AccessibleRole.TEXT);
    HBox line = new HBox(sign, words);
    line.getStyleClass().add(Styles.SAYING_LINE);
    getChildren().addAll(line, cautions);
    sayings.subscribe(this::show);
  }

  private void show(Saying saying) {
    sign.show(
        switch (saying.kind()) {
          case NONE -> Sign.Kind.NONE;
          case TAKEN -> Sign.Kind.TAKEN;
          case TAKEN_BACK -> Sign.Kind.TAKEN_BACK;
          case MOVED -> Sign.Kind.NOW;
          case NOT_TAKEN -> Sign.Kind.REFUSED;
          case HELD -> Sign.Kind.HELD;
        });
    words.setText(saying.words());
    cautions.getChildren().setAll(saying.cautions().stream().map(SayingPane::caution).toList());
    setAccessibleText(saying.words() + ". " + String.join(". ", saying.cautions()));
  }

  static HBox caution(String sentence) {
    Label label = Words.label(null, Styles.CAUTION);
    label.setText(WindowText.CAUTION.with(sentence));
    HBox line = new HBox(new Sign(Sign.Kind.CAUTION), label);
    line.getStyleClass().add(Styles.CAUTION_LINE);
    return line;
  }
}
