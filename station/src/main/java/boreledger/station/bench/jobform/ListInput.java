package boreledger.station.bench.jobform;

import boreledger.station.bench.jobform.Choices.Choice;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.JobFormText;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyEvent;
import javafx.util.StringConverter;

/** A list to choose from, which opens on demand. */
final class ListInput implements FieldInput {
  private final ComboBox<Choice> box = new ComboBox<>();
  private final List<Choice> choices;
  private Consumer<String> chosen = choice -> {};
  private boolean isShowing;

  ListInput(String id, List<Choice> choices) {
    this.choices = choices;
    box.setId(id);
    box.getStyleClass().add(Styles.FORM_LIST);
    box.setMaxWidth(Double.MAX_VALUE);
    box.setMinWidth(0);
    box.setVisibleRowCount(12);
    box.setConverter(new InWords());
    box.setButtonCell(new Chosen());
    box.getItems().setAll(choices);
    box.addEventHandler(KeyEvent.KEY_TYPED, this::letter);
    box.setOnShown(shown -> inTheLightOfTheWindow());
    box.valueProperty().addListener((property, before, now) -> tell(now));
    show("");
  }

  @Override
  public Node node() {
    return box;
  }

  @Override
  public List<? extends Node> stops() {
    return List.of(box);
  }

  @Override
  public void show(String value) {
    Choice known =
        choices.stream().filter(choice -> choice.value().equals(value)).findFirst().orElse(null);
    isShowing = true;
    box.setValue(known == null ? new Choice(value, JobFormText.CHOICE_UNKNOWN.with(value)) : known);
    isShowing = false;
  }

  @Override
  public String value() {
    return box.getValue().value();
  }

  @Override
  public void onTyped(Consumer<String> action) {
    chosen = action;
  }

  @Override
  public void describe(String words) {
    box.setAccessibleText(words);
  }

  boolean isOpen() {
    return box.isShowing();
  }

  /** A letter goes to the next choice that begins with it, round and round. */
  private void letter(KeyEvent event) {
    String typed = event.getCharacter().toLowerCase(Locale.ROOT);
    boolean isLetter = typed.length() == 1 && Character.isLetterOrDigit(typed.charAt(0));
    if (!isLetter || event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    int count = box.getItems().size();
    int now = box.getSelectionModel().getSelectedIndex();
    for (int step = 1; step <= count; step++) {
      int at = Math.floorMod(now + step, count);
      if (box.getItems().get(at).words().toLowerCase(Locale.ROOT).startsWith(typed)) {
        box.getSelectionModel().select(at);
        event.consume();
        return;
      }
    }
  }

  private void tell(Choice now) {
    if (!isShowing && now != null) {
      chosen.accept(now.value());
    }
  }

  /** A list that opens has a root of its own, which knows nothing of the window's colours. */
  private void inTheLightOfTheWindow() {
    if (box.getSkin() instanceof ComboBoxListViewSkin<?> skin) {
      Parent list = skin.getPopupContent().getScene().getRoot();
      List<String> styles = box.getScene().getRoot().getStyleClass();
      for (Light light : Light.values()) {
        list.getStyleClass().remove(light.style());
        if (!light.style().isEmpty() && styles.contains(light.style())) {
          list.getStyleClass().add(light.style());
        }
      }
    }
  }

  private static final class Chosen extends ListCell<Choice> {
    @Override
    protected void updateItem(Choice choice, boolean empty) {
      super.updateItem(choice, empty);
      setText(choice == null ? "" : choice.brief());
    }
  }

  private static final class InWords extends StringConverter<Choice> {
    @Override
    public String toString(Choice choice) {
      return choice == null ? "" : choice.words();
    }

    @Override
    public Choice fromString(String words) {
      throw new UnsupportedOperationException("nobody types into this list");
    }
  }
}
