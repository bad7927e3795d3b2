package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Words;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** Nodes that are there only while they are wanted. */
final class Showing {
  private Showing() {}

  /** A node that takes no place while it is not shown. */
  static <T extends Node> T when(ObservableValue<Boolean> shown, T node) {
    shown.subscribe(
        now -> {
          node.setVisible(now);
          node.setManaged(now);
        });
    return node;
  }

  /** A label that takes no place while it is empty. */
  static Label words(String id, ObservableValue<String> words, String... styles) {
    Label label = Words.label(id, styles);
    label.textProperty().bind(words);
    return when(words.map(each -> !each.isEmpty()), label);
  }
}
