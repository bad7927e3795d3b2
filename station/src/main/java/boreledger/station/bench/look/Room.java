package boreledger.station.bench.look;

import javafx.scene.Parent;

/**
 * A room of the window.
 *
 * @param id the word by which it is found and remembered
 * @param name what a person calls it
 * @param view what it shows
 * @param entered called each time a person goes there
 */
public record Room(String id, String name, Parent view, Runnable entered) {
  /** A room that needs not know when it is entered. */
  public Room(String id, String name, Parent view) {
    this(id, name, view, () -> {});
  }
}
