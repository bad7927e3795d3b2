package boreledger.station.bench.window;

import boreledger.station.bench.look.Room;
import java.util.function.Supplier;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** A room that is built when somebody first goes there, so that the window need not wait for it. */
public final class LazyRoom {
  private final StackPane view = new StackPane();
  private final Supplier<Room> builder;
  private Room built;

  private LazyRoom(Supplier<Room> builder) {
    this.builder = builder;
    view.setMinSize(0, 0);
  }

  /**
   * A room of which only id and name are known yet.
   *
   * @param builder makes the room itself, once, on the screen's thread
   */
  public static Room of(String id, String name, Supplier<Room> builder) {
    LazyRoom lazy = new LazyRoom(builder);
    return new Room(id, name, lazy.view, lazy::enter, lazy::take);
  }

  private void enter() {
    if (built == null) {
      built = builder.get();
      view.getChildren().add(built.view());
    }
    built.entered().run();
  }

  private boolean take(KeyEvent key) {
    return built != null && built.keys().test(key);
  }
}
