package boreledger.station.bench.view;

import boreledger.station.bench.model.Text;
import javafx.beans.property.BooleanProperty;
import javafx.scene.control.ToggleButton;

/** A switch on the rail, whose words say how it stands. */
final class Switch {
  private Switch() {}

  static ToggleButton of(String id, Text off, Text on, BooleanProperty value) {
    ToggleButton button = new ToggleButton();
    button.setId(id);
    button.getStyleClass().setAll(Styles.RAIL_SWITCH);
    button.setMaxWidth(Double.MAX_VALUE);
    button.selectedProperty().bindBidirectional(value);
    value.subscribe(selected -> button.setText((selected ? on : off).with()));
    return button;
  }
}
