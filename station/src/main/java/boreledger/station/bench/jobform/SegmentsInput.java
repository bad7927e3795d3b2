package boreledger.station.bench.jobform;

import boreledger.station.bench.jobform.Choices.Choice;
import boreledger.station.bench.look.Styles;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/**
 * A few choices side by side. The focus comes to the chosen one; arrow keys choose among them. A
 * value that is none of them stands behind them until another is chosen.
 */
final class SegmentsInput implements FieldInput {
  private final String id;
  private final HBox row = new HBox();
  private final List<Choice> choices;
  private final List<ToggleButton> buttons = new ArrayList<>();
  private String value = "";
  private String words = "";
  private Consumer<String> chosen = choice -> {};

  SegmentsInput(String id, List<Choice> choices) {
    this.id = id;
    this.choices = choices;
    row.getStyleClass().add(Styles.FORM_SEGMENTS);
    row.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    show("");
  }

  @Override
  public Node node() {
    return row;
  }

  @Override
  public List<? extends Node> stops() {
    return buttons.stream().filter(Node::isFocusTraversable).toList();
  }

  @Override
  public void show(String shown) {
    value = shown;
    List<Choice> all = all();
    if (buttons.size() != all.size()) {
      buttons.clear();
      all.forEach(choice -> buttons.add(button(choice)));
      row.getChildren().setAll(buttons);
    }
    boolean none = all.stream().noneMatch(choice -> choice.value().equals(shown));
    for (int i = 0; i < buttons.size(); i++) {
      boolean isChosen = all.get(i).value().equals(shown);
      buttons.get(i).setSelected(isChosen);
      buttons.get(i).setFocusTraversable(isChosen || none && i == 0);
    }
    describe(words);
  }

  @Override
  public String value() {
    return value;
  }

  @Override
  public void onTyped(Consumer<String> action) {
    chosen = action;
  }

  @Override
  public void describe(String described) {
    words = described;
    buttons.forEach(button -> button.setAccessibleText(words + ": " + button.getText()));
  }

  private List<Choice> all() {
    List<Choice> all = new ArrayList<>(choices);
    if (!value.isEmpty() && all.stream().noneMatch(choice -> choice.value().equals(value))) {
      all.add(new Choice(value, value));
    }
    return all;
  }

  private ToggleButton button(Choice choice) {
    ToggleButton button = new ToggleButton(choice.words());
    button.setId(id + "-" + (choice.value().isEmpty() ? "none" : choice.value()));
    button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
    button.getStyleClass().setAll(Styles.FORM_SEGMENT);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(pressed -> choose(choice.value()));
    return button;
  }

  private void choose(String choice) {
    int at = all().stream().map(Choice::value).toList().indexOf(choice);
    buttons.get(at).requestFocus();
    show(choice);
    chosen.accept(choice);
  }

  private void pressed(KeyEvent event) {
    int step = step(event.getCode());
    List<Choice> all = all();
    int now = buttons.indexOf(event.getTarget());
    if (step != 0 && now >= 0) {
      int next = Math.min(Math.max(now + step, 0), all.size() - 1);
      choose(all.get(next).value());
      event.consume();
    }
  }

  private static int step(KeyCode code) {
    return switch (code) {
      case LEFT, UP -> -1;
      case RIGHT, DOWN -> 1;
      default -> 0;
    };
  }
}
