package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Place;
import boreledger.station.job.draft.Problem;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One field: its label, where it is typed, its unit, what helps, and what is wrong with it. */
final class FieldCell extends VBox {
  private final FormModel model;
  private final Choices choices;
  private final Place place;
  private final FieldInput input;
  private final Label unit = new Label();
  private final Label note;
  private final Label help;
  private final HBox problem = new HBox();
  private final Label problemWords;
  private String shownText;
  private String untouched = "";
  private String untouchedText = "";
  private DisplayUnit shownUnit;

  FieldCell(FormModel model, Choices choices, Place place) {
    this.model = model;
    this.choices = choices;
    this.place = place;
    String id = idOf(place);
    input = inputOf(id, place.field());
    note = Words.label(id + "-note", Styles.FORM_NOTE);
    help = Words.label(id + "-help", Styles.FORM_HELP);
    problemWords = Words.label(id + "-problem", Styles.FORM_PROBLEM_WORDS);
    setId(id + "-cell");
    getStyleClass().add(Styles.FORM_CELL);
    build();
    input.onTyped(this::typed);
    refresh();
  }

  /** The word by which a field is found, such as {@code nominal-bore} or {@code ring-2-name}. */
  static String idOf(Place place) {
    String name = word(place.field().name());
    if (!place.field().section().repeated()) {
      return name;
    }
    return word(place.field().section().name()) + "-" + (place.index() + 1) + "-" + name;
  }

  Place place() {
    return place;
  }

  FieldInput input() {
    return input;
  }

  /** Shows what the model says now; a person's own typing is left as it is. */
  void refresh() {
    String draftText = model.draft().text(place);
    if (!draftText.equals(shownText) || model.unit() != shownUnit) {
      shownText = draftText;
      shownUnit = model.unit();
      untouched = rendering().shown(draftText);
      untouchedText = draftText;
      input.show(untouched);
    }
    unit.setText(rendering().unitBeside(input.value()));
    show(note, rendering().note(draftText, input.value()));
    show(help, helpWords());
    Optional<Problem> wrong = model.problem(place);
    show(
        problemWords, wrong.map(it -> ProblemWords.of(place.field(), it, model.unit())).orElse(""));
    problem.setVisible(wrong.isPresent());
    problem.setManaged(wrong.isPresent());
    setVisible(model.isAsked(place));
    setManaged(model.isAsked(place));
    input.describe(spoken());
  }

  private void build() {
    Label label = Words.label(idOf(place) + "-label", Styles.FORM_LABEL);
    label.setText(FieldWords.of(place.field()).label().with());
    label.setLabelFor(input.node());
    unit.getStyleClass().add(Styles.FORM_UNIT);
    unit.setMinWidth(Region.USE_PREF_SIZE);
    HBox line = new HBox(input.node(), unit, note);
    line.getStyleClass().add(Styles.FORM_LINE);
    HBox.setHgrow(place.field().kind().isNumber() ? note : input.node(), Priority.ALWAYS);
    problem.getStyleClass().add(Styles.FORM_PROBLEM);
    problem.getChildren().addAll(new Sign(Sign.Kind.REFUSED), problemWords);
    HBox.setHgrow(problemWords, Priority.ALWAYS);
    getChildren().addAll(label, line, problem, help);
    unit.managedProperty().bind(unit.textProperty().isNotEmpty());
  }

  private FieldInput inputOf(String id, Field field) {
    if (!choices.few(field).isEmpty()) {
      return new SegmentsInput(id, choices.few(field));
    }
    return choices.many(field).isEmpty()
        ? new TextInput(id, width(field.kind()))
        : new ListInput(id, choices.many(field));
  }

  private static String width(Kind kind) {
    if (!kind.isNumber()) {
      return Styles.FORM_INPUT;
    }
    return kind.isList() ? Styles.FORM_NUMBERS : Styles.FORM_NUMBER;
  }

  /** Typing back what stood there means the same value again, not what is left of it in inches. */
  private void typed(String text) {
    shownText = text.equals(untouched) ? untouchedText : rendering().draftText(text);
    model.type(place, shownText);
  }

  private Rendering rendering() {
    return model.rendering(place.field());
  }

  private String helpWords() {
    String meaning = choices.meaning(place.field(), model.draft().text(place));
    Text fixed = FieldWords.of(place.field()).help();
    return meaning.isEmpty() && fixed != null ? fixed.with() : meaning;
  }

  private String spoken() {
    StringBuilder spoken = new StringBuilder(FieldWords.of(place.field()).label().with());
    for (Label part : new Label[] {unit, problemWords, note, help}) {
      if (!part.getText().isEmpty()) {
        spoken.append(", ").append(part.getText());
      }
    }
    return spoken.toString();
  }

  private static void show(Label label, String words) {
    label.setText(words);
    label.setVisible(!words.isEmpty());
    label.setManaged(!words.isEmpty());
  }

  private static String word(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
