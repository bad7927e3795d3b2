package boreledger.station.bench.gaps;

import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.gaps.Supposing.Part;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.Text;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Where another use and other running temperatures are supposed. */
final class SupposingPane extends VBox {
  private final Supposing supposing;
  private final ComboBox<String> use = new ComboBox<>();
  private final Map<Part, TextField> temperatures = new EnumMap<>(Part.class);
  private final Label holding = Words.label("what-if-holding", Styles.MUTED);

  SupposingPane(GapsModel model) {
    this.supposing = model.supposing();
    getStyleClass().add(Styles.FIELDS);
    use.setId("what-if");
    use.setMaxWidth(Double.MAX_VALUE);
    use.setAccessibleText(GapsText.WHAT_IF.with());
    use.setConverter(new UseWords());
    model.findings().latest().subscribe(this::found);
    Label title = Words.label(null, Styles.FIELD_NAME);
    title.setText(GapsText.WHAT_IF.with());
    Label problem = Words.label("what-if-problem", Styles.PROBLEM);
    problem.textProperty().bind(supposing.problem());
    problem.visibleProperty().bind(problem.textProperty().isNotEmpty());
    problem.managedProperty().bind(problem.textProperty().isNotEmpty());
    Label heat = Words.label(null, Styles.FIELD_NAME);
    heat.setText(GapsText.WHAT_IF_HEAT.with());
    Label outcome = Words.label("what-if-hot", Styles.VERDICT_TITLE);
    model.page().subscribe(page -> outcome.setText(page == null ? "" : page.supposed()));
    outcome.managedProperty().bind(outcome.textProperty().isNotEmpty());
    getChildren().addAll(title, use, heat, temperatures(), holding, buttons(), problem, outcome);
  }

  private GridPane temperatures() {
    GridPane row = new GridPane();
    row.getStyleClass().add(Styles.CARDS);
    Map<Part, Text> names =
        Map.of(
            Part.RING, GapsText.TEMP_RING,
            Part.WALL_TOP, GapsText.TEMP_WALL_TOP,
            Part.WALL_BOTTOM, GapsText.TEMP_WALL_BOTTOM);
    for (Part part : Part.values()) {
      TextField field = new TextField();
      field.setId("what-if-" + part.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
      field.textProperty().bindBidirectional(supposing.typed(part));
      field.setOnAction(entered -> supposing.suppose());
      temperatures.put(part, field);
      ColumnConstraints third = new ColumnConstraints();
      third.setPercentWidth(100.0 / Part.values().length);
      row.getColumnConstraints().add(third);
      row.add(new Field(names.get(part).with(), field), part.ordinal(), 0);
    }
    return row;
  }

  private FlowPane buttons() {
    Button suppose = new Button(GapsText.SUPPOSE.with());
    suppose.setId("what-if-suppose");
    suppose.setOnAction(pressed -> supposing.suppose());
    Button back = new Button(GapsText.AS_IT_IS.with());
    back.setId("what-if-back");
    back.setOnAction(pressed -> supposing.asItIs());
    FlowPane buttons = new FlowPane(suppose, back);
    buttons.getStyleClass().add(Styles.CHOICES);
    return buttons;
  }

  private void found(Finding finding) {
    if (finding == null) {
      return;
    }
    if (use.getItems().isEmpty()) {
      use.getItems().add(Supposing.AS_THE_JOB_SAYS);
      use.getItems().addAll(finding.sessions().tables().gapRules().uses().keySet());
      use.valueProperty().bindBidirectional(supposing.use());
    }
    temperatures.forEach((part, field) -> field.setPromptText(Supposing.holding(finding, part)));
    holding.setText(Supposing.origins(finding));
  }

  /** What a use is called. */
  private static final class UseWords extends StringConverter<String> {
    @Override
    public String toString(String name) {
      return name == null || name.equals(Supposing.AS_THE_JOB_SAYS)
          ? GapsText.AS_THE_JOB_SAYS.with()
          : name;
    }

    @Override
    public String fromString(String words) {
      throw new UnsupportedOperationException("uses are chosen, not typed");
    }
  }
}
