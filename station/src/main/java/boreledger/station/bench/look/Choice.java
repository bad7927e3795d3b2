package boreledger.station.bench.look;

import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/** A few values of which one is chosen, side by side; the chosen one has a mark before it. */
public final class Choice<T> extends FlowPane {
  private static final String MARK = "\u25b8 ";

  /** The values with their words, in order. */
  public Choice(Map<T, String> words, ObjectProperty<T> value) {
    getStyleClass().add(Styles.CHOICES);
    words.forEach(
        (each, name) -> getChildren().add(button(getChildren().size(), each, name, value)));
  }

  private static <T> ToggleButton button(int place, T each, String name, ObjectProperty<T> value) {
    ToggleButton button = new ToggleButton(name);
    button.setId("choice-" + place);
    button.getStyleClass().setAll(Styles.CHOICE);
    button.setOnAction(
        pressed -> {
          value.set(each);
          button.setSelected(true);
        });
    value.subscribe(
        now -> {
          boolean chosen = each.equals(now);
          button.setSelected(chosen);
          button.setText(chosen ? MARK + name : name);
        });
    return button;
  }
}
