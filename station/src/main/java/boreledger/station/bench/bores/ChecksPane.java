package boreledger.station.bench.bores;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.VerdictSign;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** The shown cylinder's numbers against the job's limits; each unfolds its budget. */
final class ChecksPane extends ScrollPane {
  private final VBox checks = new VBox();

  ChecksPane(ObservableValue<BoresPage> page) {
    checks.getStyleClass().add(Styles.FIELD);
    setContent(checks);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    page.subscribe(this::show);
  }

  private void show(BoresPage page) {
    checks.getChildren().clear();
    if (page == null) {
      return;
    }
    if (page.checks().isEmpty()) {
      checks.getChildren().add(words(Text.VERDICT_NO_LIMITS.with()));
    }
    page.checks().forEach(check -> checks.getChildren().add(line(check)));
  }

  private static Node line(BoresPage.Check check) {
    VBox budget = new VBox(words(Text.BORES_BUDGET.with()));
    budget.getStyleClass().add(Styles.FIELD);
    check.budget().forEach(each -> budget.getChildren().add(words(each)));
    TitledPane pane = new TitledPane();
    Label title = Words.label(null);
    title.setText(check.words());
    title.setGraphic(new Sign(VerdictSign.of(check.kind())));
    pane.setGraphic(title);
    title.maxWidthProperty().bind(pane.widthProperty().multiply(0.9));
    pane.setAccessibleText(check.words());
    pane.setContent(budget);
    pane.setExpanded(false);
    pane.setAnimated(false);
    return pane;
  }

  private static Label words(String sentence) {
    Label label = Words.label(null);
    label.setText(sentence);
    return label;
  }
}
