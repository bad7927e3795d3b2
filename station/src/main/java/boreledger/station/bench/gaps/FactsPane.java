package boreledger.station.bench.gaps;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.WindowText;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The shown ring in words: target, tightest point, agreement, and what else could be supposed. */
final class FactsPane extends ScrollPane {
  private final GapsModel model;
  private final VBox first = new VBox();
  private final VBox more = new VBox();

  FactsPane(GapsModel model) {
    this.model = model;
    first.getStyleClass().add(Styles.FIELD);
    more.getStyleClass().add(Styles.FIELD);
    VBox all = new VBox(first, new SupposingPane(model), more);
    all.getStyleClass().add(Styles.FIELDS);
    setContent(all);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    model.page().subscribe(this::show);
  }

  private void show(GapsPage page) {
    first.getChildren().clear();
    more.getChildren().clear();
    if (page == null) {
      return;
    }
    if (model.supposing().isSupposed()) {
      add(first, List.of(GapsText.SUPPOSED.with()), Styles.PROBLEM);
    }
    add(first, page.facts(), Styles.FIELD_NAME);
    for (String caution : page.cautions()) {
      add(first, List.of(WindowText.CAUTION.with(caution)), Styles.PROBLEM);
    }
    add(more, page.agreement(), Styles.MUTED);
    if (!page.choice().isEmpty()) {
      add(more, List.of(GapsText.CHOICE.with()), Styles.VERDICT_TITLE);
      add(more, page.choice(), Styles.MUTED);
    }
  }

  private static void add(VBox lines, List<String> sentences, String style) {
    sentences.forEach(sentence -> lines.getChildren().add(words(sentence, style)));
  }

  private static Label words(String sentence, String style) {
    Label label = Words.label(null, style);
    label.setText(sentence);
    return label;
  }
}
