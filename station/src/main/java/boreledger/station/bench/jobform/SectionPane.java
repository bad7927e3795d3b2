package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.bench.words.Text;
import boreledger.station.job.draft.Section;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A section with its title; of rings, pistons and marks any number. */
final class SectionPane extends VBox {
  private final FormModel model;
  private final Choices choices;
  private final Section section;
  private final VBox parts = new VBox();
  private final List<PartPane> panes = new ArrayList<>();
  private final Button add = new Button();

  SectionPane(FormModel model, Choices choices, Section section) {
    this.model = model;
    this.choices = choices;
    this.section = section;
    SectionWords words = SectionWords.of(section);
    setId("section-" + section.key());
    getStyleClass().add(Styles.FORM_SECTION);
    Label title = Words.label(getId() + "-title", Styles.FORM_SECTION_TITLE);
    title.setText(words.title().with());
    getChildren().add(title);
    if (words.help() != null) {
      Label help = Words.label(getId() + "-help", Styles.FORM_HELP);
      help.setText(words.help().with());
      getChildren().add(help);
    }
    parts.getStyleClass().add(Styles.FORM_PARTS);
    getChildren().add(parts);
    if (section.repeated()) {
      style(add, words.add().with(), "add-" + section.key(), this::add);
      getChildren().add(add);
    }
    build();
  }

  Section section() {
    return section;
  }

  List<FieldCell> cells() {
    return panes.stream().flatMap(pane -> pane.cells().stream()).toList();
  }

  /** What is reached first where no field is to be seen. */
  Node firstButton() {
    return section.repeated() ? add : panes.get(0).fold();
  }

  void refresh() {
    if (panes.size() == model.draft().count(section)) {
      panes.forEach(PartPane::refresh);
    } else {
      build();
    }
  }

  private void build() {
    panes.clear();
    parts.getChildren().clear();
    for (int index = 0; index < model.draft().count(section); index++) {
      PartPane pane = new PartPane(model, choices, section, index);
      panes.add(pane);
      parts.getChildren().add(section.repeated() ? new VBox(head(index), pane) : pane);
    }
  }

  private Node head(int index) {
    String part = SectionWords.of(section).part().with(Integer.toString(index + 1));
    Label name = Words.label("part-" + section.key() + "-" + (index + 1), Styles.FORM_PART_TITLE);
    name.setText(part);
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    HBox head =
        new HBox(
            name,
            button("duplicate", JobFormText.DUPLICATE, part, index, () -> duplicate(index)),
            button("remove", JobFormText.REMOVE, part, index, () -> remove(index)));
    head.getStyleClass().add(Styles.FORM_PART_HEAD);
    return head;
  }

  private Button button(String verb, Text words, String part, int index, Runnable action) {
    Button button = new Button();
    String id = verb + "-" + section.key() + "-" + (index + 1);
    style(button, words.with(), id, action);
    button.setAccessibleText(JobFormText.PART_BUTTON.with(words.with(), part));
    return button;
  }

  private static void style(Button button, String words, String id, Runnable action) {
    button.setId(id);
    button.setText(words);
    button.getStyleClass().setAll(Styles.FORM_BUTTON);
    button.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    button.setOnAction(pressed -> action.run());
  }

  private void add() {
    model.add(section);
    begin(panes.size() - 1);
  }

  private void duplicate(int index) {
    model.duplicate(section, index);
    begin(index + 1);
  }

  private void remove(int index) {
    model.remove(section, index);
    add.requestFocus();
  }

  private void begin(int index) {
    panes.get(index).cells().get(0).input().stops().get(0).requestFocus();
  }
}
