package boreledger.station.bench.gaps;

import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import boreledger.station.results.WhatIf;
import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The shown ring in words: target, tightest point, agreement, and what another use would want. */
final class FactsPane extends ScrollPane {
  private static final String AS_THE_JOB_SAYS = "";

  private final GapsModel model;
  private final VBox lines = new VBox();
  private final ComboBox<String> use = new ComboBox<>();

  FactsPane(GapsModel model) {
    this.model = model;
    lines.getStyleClass().add(Styles.FIELD);
    use.setId("what-if");
    use.setMaxWidth(Double.MAX_VALUE);
    use.setAccessibleText(Text.GAPS_WHAT_IF.with());
    use.setConverter(new UseWords());
    use.setOnAction(
        chosen ->
            model
                .findings()
                .whatIf()
                .set(
                    use.getValue() == null || use.getValue().equals(AS_THE_JOB_SAYS)
                        ? WhatIf.AS_IT_IS
                        : new WhatIf(use.getValue(), null)));
    VBox all = new VBox(words(Text.GAPS_WHAT_IF.with(), Styles.FIELD_NAME), use, lines);
    all.getStyleClass().add(Styles.FIELDS);
    setContent(all);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    model.findings().latest().subscribe(this::uses);
    model.page().subscribe(this::show);
  }

  private void uses(Finding finding) {
    if (finding != null && use.getItems().isEmpty()) {
      use.getItems().add(AS_THE_JOB_SAYS);
      use.getItems().addAll(finding.sessions().tables().gapRules().uses().keySet());
      use.setValue(AS_THE_JOB_SAYS);
    }
  }

  private void show(GapsPage page) {
    lines.getChildren().clear();
    if (page == null) {
      return;
    }
    if (model.findings().whatIf().get().use() != null) {
      add(List.of(Text.GAPS_SUPPOSED.with()), Styles.PROBLEM);
    }
    add(page.facts(), Styles.FIELD_NAME);
    add(page.agreement(), Styles.MUTED);
    for (String caution : page.cautions()) {
      add(List.of(Text.CAUTION.with(caution)), Styles.PROBLEM);
    }
    if (!page.choice().isEmpty()) {
      add(List.of(Text.GAPS_CHOICE.with()), Styles.VERDICT_TITLE);
      add(page.choice(), Styles.MUTED);
    }
  }

  private void add(List<String> sentences, String style) {
    sentences.forEach(sentence -> lines.getChildren().add(words(sentence, style)));
  }

  private static Label words(String sentence, String style) {
    Label label = Words.label(null, style);
    label.setText(sentence);
    return label;
  }

  /** What a use is called. */
  private static final class UseWords extends StringConverter<String> {
    @Override
    public String toString(String name) {
      return name == null || name.equals(AS_THE_JOB_SAYS) ? Text.GAPS_AS_THE_JOB_SAYS.with() : name;
    }

    @Override
    public String fromString(String words) {
      throw new UnsupportedOperationException("uses are chosen, not typed");
    }
  }
}
