package boreledger.station.bench.look;

import boreledger.station.bench.words.Text;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;

/** A switch on the rail, whose words say how it stands. */
public final class Switch {
  private Switch() {}

  /** A switch with words for off and on. */
  public static ToggleButton of(String id, Text off, Text on, BooleanProperty value) {
    ToggleButton button = new ToggleButton();
    button.setId(id);
    button.getStyleClass().setAll(Styles.RAIL_SWITCH);
    button.setMaxWidth(Double.MAX_VALUE);
    button.selectedProperty().bindBidirectional(value);
    value.subscribe(selected -> button.setText((selected ? on : off).with()));
    return button;
  }

  /** A switch that goes from one value to the next when it is pressed. */
  public static <T> Button through(
      String id, ObjectProperty<T> value, UnaryOperator<T> next, Function<T, String> words) {
    Button button = new Button();
    button.setId(id);
    button.getStyleClass().setAll(Styles.RAIL_SWITCH);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(pressed -> value.set(next.apply(value.get())));
    value.subscribe(now -> button.setText(words.apply(now)));
    return button;
  }
}
