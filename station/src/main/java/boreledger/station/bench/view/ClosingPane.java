package boreledger.station.bench.view;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.VerdictSign;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Closing;
import boreledger.station.bench.model.Verdict;
import boreledger.station.bench.words.BenchText;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is said when the run is over: how it ended, and the cylinders' verdicts. */
final class ClosingPane extends VBox {
  private final Sign sign = new Sign(Sign.Kind.NONE);
  private final Label title = Words.label("closing-title", Styles.CLOSING_TITLE);
  private final Label detail = Words.label("closing-detail", Styles.CLOSING_DETAIL);
  private final VBox verdicts = new VBox();

  ClosingPane(ObservableValue<Closing> closing) {
    setId("closing");
    getStyleClass().add(Styles.CLOSING);
    verdicts.setId("verdicts");
    verdicts.getStyleClass().add(Styles.VERDICTS);
    ScrollPane scroll = new ScrollPane(verdicts);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    HBox head = new HBox(sign, title);
    head.getStyleClass().add(Styles.CLOSING_HEAD);
    Label defers = Words.label("defers", Styles.DEFERS);
    defers.setText(BenchText.OVER_DEFERS.with());
    getChildren().addAll(head, detail, scroll, defers);
    closing.subscribe(this::show);
  }

  private void show(Closing closing) {
    if (closing == null) {
      return;
    }
    sign.show(
        switch (closing.ending()) {
          case PLAN_DONE -> Sign.Kind.TAKEN;
          case LINE_ENDED, STOPPED -> Sign.Kind.ENDED;
          case LINE_BROKE, LEDGER_FAILED -> Sign.Kind.REFUSED;
        });
    title.setText(closing.title());
    detail.setText(closing.detail());
    verdicts.getChildren().clear();
    if (closing.verdicts().isEmpty() && closing.cautions().isEmpty()) {
      verdicts.getChildren().add(Words.fixed(BenchText.OVER_NO_RESULTS.with(), Styles.MUTED));
    }
    closing.verdicts().forEach(each -> verdicts.getChildren().add(line(each)));
    closing.cautions().forEach(each -> verdicts.getChildren().add(SayingPane.caution(each)));
  }

  private static Node line(Verdict verdict) {
    Sign sign = new Sign(VerdictSign.of(verdict.kind()));
    Label cylinder = Words.fixed(verdict.title(), Styles.VERDICT_TITLE);
    VBox text = new VBox(words(verdict.words(), Styles.VERDICT_WORDS));
    if (!verdict.details().isEmpty()) {
      text.getChildren().add(words(verdict.details(), Styles.MUTED));
    }
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox line = new HBox(sign, cylinder, text);
    line.getStyleClass().add(Styles.VERDICT);
    return line;
  }

  private static Label words(String sentence, String style) {
    Label label = Words.label(null, style);
    label.setText(sentence);
    return label;
  }
}
