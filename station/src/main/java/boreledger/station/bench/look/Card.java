package boreledger.station.bench.look;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A part of a room with a title over it. */
public class Card extends VBox {
  /** A card with its content, from top to bottom. */
  public Card(String title, Node... content) {
    getStyleClass().add(Styles.CARD);
    Label words = Words.label(null, Styles.CARD_TITLE);
    words.setText(title);
    getChildren().add(words);
    getChildren().addAll(content);
  }
}
