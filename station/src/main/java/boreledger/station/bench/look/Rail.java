package boreledger.station.bench.look;

import boreledger.station.bench.words.WindowText;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The spine at the side: the program's name, the rooms there are, and a few switches. */
public final class Rail extends VBox {
  private static final double UPWARDS_DEG = -90;

  /** A rail; the shown room can be changed by it and from outside. */
  public Rail(List<Room> rooms, ObjectProperty<Room> shown, List<? extends Node> switches) {
    getStyleClass().add(Styles.RAIL);
    Label name = Words.fixed(WindowText.PROGRAM.with(), Styles.RAIL_NAME);
    name.setId("program");
    name.setRotate(UPWARDS_DEG);
    getChildren().addAll(new Sign(Sign.Kind.PROGRAM), new Group(name));
    for (Room room : rooms) {
      getChildren().add(button(room, rooms.indexOf(room) + 1, shown));
    }
    Region between = new Region();
    VBox.setVgrow(between, Priority.ALWAYS);
    getChildren().add(between);
    getChildren().addAll(switches);
  }

  private static Node button(Room room, int place, ObjectProperty<Room> shown) {
    Button button = new Button(WindowText.ROOM_KEY.with(room.name(), Integer.toString(place)));
    button.setId("room-" + room.id());
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(pressed -> shown.set(room));
    shown.subscribe(
        now -> {
          boolean here = now == room;
          button.getStyleClass().setAll(here ? Styles.RAIL_ROOM_SHOWN : Styles.RAIL_ROOM);
          button.setAccessibleText(here ? WindowText.ROOM_SHOWN.with(room.name()) : room.name());
        });
    return button;
  }
}
