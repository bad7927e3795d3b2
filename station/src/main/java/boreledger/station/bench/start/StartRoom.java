package boreledger.station.bench.start;

import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Three cards, what is gauged, with what, and how, and the button that begins. */
public final class StartRoom {
  /** By which it is gone to. */
  public static final String ID = "start";

  private static final int CARDS = 3;

  private StartRoom() {}

  /** The room of a model. */
  public static Room of(StartModel model) {
    GridPane cards = new GridPane();
    cards.getStyleClass().add(Styles.CARDS);
    for (int i = 0; i < CARDS; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / CARDS);
      cards.getColumnConstraints().add(column);
    }
    cards.add(new JobPane(model), 0, 0);
    cards.add(new MeasurePane(model), 1, 0);
    cards.add(new GaugePane(model), 2, 0);
    ScrollPane scroll = new ScrollPane(cards);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox view =
        new VBox(
            Words.fixed(Text.START_TITLE.with(), Styles.ROOM_TITLE), scroll, new BeginPane(model));
    view.getStyleClass().add(Styles.ROOM);
    return new Room(ID, Text.ROOM_START.with(), view, model::lookForPorts);
  }
}
