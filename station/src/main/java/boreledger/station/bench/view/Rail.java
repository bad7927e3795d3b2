package boreledger.station.bench.view;

import boreledger.station.bench.model.Text;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;

/** The spine at the side: the program's name, the rooms there are, and a few switches. */
final class Rail extends VBox {
  private static final double UPWARDS_DEG = -90;

  /** One room; the first one is shown. */
  record Room(String name) {}

  Rail(List<Room> rooms, List<? extends Node> switches) {
    getStyleClass().add(Styles.RAIL);
    Label name = Words.fixed(Text.PROGRAM.with(), Styles.RAIL_NAME);
    name.setId("program");
    name.setRotate(UPWARDS_DEG);
    getChildren().addAll(mark(), new Group(name));
    for (Room room : rooms) {
      getChildren().add(button(room, room == rooms.get(0)));
    }
    Region between = new Region();
    VBox.setVgrow(between, Priority.ALWAYS);
    getChildren().add(between);
    getChildren().addAll(switches);
  }

  private static Node button(Room room, boolean shown) {
    ToggleButton button = new ToggleButton(room.name());
    button.getStyleClass().setAll(Styles.RAIL_ROOM);
    button.setSelected(shown);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setAccessibleText(shown ? Text.ROOM_SHOWN.with(room.name()) : room.name());
    return button;
  }

  private static Node mark() {
    Circle block = new Circle(16);
    Circle bore = new Circle(10);
    Line gauge = new Line(-10, 0, 10, 0);
    for (var each : List.of(block, bore, gauge)) {
      each.getStyleClass().add(Styles.RAIL_MARK);
    }
    return new Group(block, bore, gauge);
  }
}
