package boreledger.station.bench.look;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/** Nodes that are there, and take up room, only while something holds. */
public final class Presence {
  private Presence() {}

  /**
   * Shows a node whenever something holds, and not else.
   *
   * @param holds what; never null in it
   * @return the node
   */
  public static <N extends Node> N when(ObservableValue<Boolean> holds, N node) {
    // Bound rather than listened to: a binding that nobody holds is forgotten with its listeners.
    node.visibleProperty().bind(holds);
    node.managedProperty().bind(node.visibleProperty());
    return node;
  }
}
