package boreledger.station.bench.look;

import java.util.function.Predicate;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;

/**
 * A room of the window.
 *
 * @param id the word by which it is found and remembered
 * @param name what a person calls it
 * @param view what it shows
 * @param entered called each time a person goes there
 * @param keys takes a key that was pressed while the room is shown and nothing is being written,
 *     before the window does; whether it used it
 */
public record Room(
    String id, String name, Parent view, Runnable entered, Predicate<KeyEvent> keys) {
  /** A room without keys of its own. */
  public Room(String id, String name, Parent view, Runnable entered) {
    this(id, name, view, entered, key -> false);
  }

  /** A room that needs not know when it is entered. */
  public Room(String id, String name, Parent view) {
    this(id, name, view, () -> {});
  }
}
