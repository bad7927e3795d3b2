package boreledger.station.bench.bores;

import boreledger.station.bench.look.CylinderChoice;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.BoresText;
import boreledger.station.bench.words.WindowText;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/**
 * The cylinders to choose from, the chosen one's form in words, and why honing will or won't do.
 */
final class CylinderPane extends ScrollPane {
  private final CylinderChoice choice;
  private final Label title = Words.label("bores-title", Styles.VERDICT_TITLE);
  private final Label verdict = Words.label("bores-verdict", Styles.VERDICT_WORDS);
  private final Label form = Words.label("bores-form");
  private final VBox reasons = new VBox();

  CylinderPane(BoresModel model) {
    choice = new CylinderChoice(model.cylinder());
    reasons.getStyleClass().add(Styles.FIELD);
    VBox all = new VBox(choice, title, verdict, form, reasons);
    all.getStyleClass().add(Styles.FIELDS);
    setContent(all);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    model.page().subscribe(this::show);
  }

  private void show(BoresPage page) {
    if (page == null) {
      return;
    }
    choice.show(page.verdicts());
    title.setText(page.shown().title());
    verdict.setText(page.shown().words());
    form.setText(page.form());
    reasons.getChildren().clear();
    if (!page.reasons().isEmpty()) {
      reasons.getChildren().add(words(BoresText.WHY.with(), Styles.VERDICT_TITLE));
    }
    page.reasons().forEach(line -> reasons.getChildren().add(words(line, Styles.MUTED)));
    page.cautions()
        .forEach(
            line ->
                reasons.getChildren().add(words(WindowText.CAUTION.with(line), Styles.PROBLEM)));
  }

  private static Label words(String sentence, String style) {
    Label label = Words.label(null, style);
    label.setText(sentence);
    return label;
  }
}
