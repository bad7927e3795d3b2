package boreledger.station.bench.bores;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.VerdictSign;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.BoresText;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
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
      checks.getChildren().add(words(BenchText.VERDICT_NO_LIMITS.with()));
    } else {
      checks.getChildren().add(words(BoresText.UNFOLD.with()));
    }
    page.checks().forEach(check -> checks.getChildren().add(line(check)));
  }

  private static Node line(BoresPage.Check check) {
    VBox budget = new VBox(words(BoresText.BUDGET.with()));
    budget.getStyleClass().add(Styles.BUDGET);
    check.budget().forEach(each -> budget.getChildren().add(words(each)));
    ToggleButton head = new ToggleButton(check.words());
    head.getStyleClass().setAll(Styles.CHECK);
    head.setGraphic(new Sign(VerdictSign.of(check.kind())));
    head.setWrapText(true);
    head.setAlignment(Pos.CENTER_LEFT);
    head.setMinHeight(Region.USE_PREF_SIZE);
    head.setMaxWidth(Double.MAX_VALUE);
    budget.visibleProperty().bind(head.selectedProperty());
    budget.managedProperty().bind(head.selectedProperty());
    return new VBox(head, budget);
  }

  private static Label words(String sentence) {
    Label label = Words.label(null, Styles.MUTED);
    label.setText(sentence);
    return label;
  }
}
