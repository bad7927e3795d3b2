package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Styles;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.TextField;

/** A line to type into. */
final class TextInput implements FieldInput {
  private final TextField field = new TextField();
  private Consumer<String> typed = value -> {};
  private boolean isShowing;

  /**
   * An empty line.
   *
   * @param style how wide it is
   */
  TextInput(String id, String style) {
    field.setId(id);
    field.getStyleClass().setAll(Styles.FORM_INPUT, style);
    field.textProperty().addListener((property, before, now) -> tell(now));
  }

  @Override
  public Node node() {
    return field;
  }

  @Override
  public List<? extends Node> stops() {
    return List.of(field);
  }

  @Override
  public void show(String value) {
    isShowing = true;
    field.setText(value);
    isShowing = false;
  }

  @Override
  public String value() {
    return field.getText();
  }

  @Override
  public void onTyped(Consumer<String> action) {
    typed = action;
  }

  @Override
  public void describe(String words) {
    field.setAccessibleText(words);
  }

  private void tell(String now) {
    if (!isShowing) {
      typed.accept(now);
    }
  }
}
