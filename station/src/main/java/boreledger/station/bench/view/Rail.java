package boreledger.station.bench.view;

import boreledger.station.bench.model.Text;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The spine at the side: the program's name, the rooms there are, and a few switches. */
final class Rail extends VBox {
  private static final double UPWARDS_DEG = -90;

  /** A room that can be gone to. */
  record Room(String name, Parent view) {}

  Rail(List<Room> rooms, ObjectProperty<Room> shown, List<? extends Node> switches) {
    getStyleClass().add(Styles.RAIL);
    Label name = Words.fixed(Text.PROGRAM.with(), Styles.RAIL_NAME);
    name.setId("program");
    name.setRotate(UPWARDS_DEG);
    getChildren().addAll(new Sign(Sign.Kind.PROGRAM), new Group(name));
    rooms.forEach(room -> getChildren().add(button(room, shown)));
    Region between = new Region();
    VBox.setVgrow(between, Priority.ALWAYS);
    getChildren().add(between);
    getChildren().addAll(switches);
  }

  private static Node button(Room room, ObjectProperty<Room> shown) {
    Button button = new Button(room.name());
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(pressed -> shown.set(room));
    shown.subscribe(
        now -> {
          boolean here = now == room;
          button.getStyleClass().setAll(here ? Styles.RAIL_ROOM_SHOWN : Styles.RAIL_ROOM);
          button.setAccessibleText(here ? Text.ROOM_SHOWN.with(room.name()) : room.name());
        });
    return button;
  }
}
