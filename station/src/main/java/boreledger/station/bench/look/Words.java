package boreledger.station.bench.look;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Makes labels. */
public final class Words {
  private Words() {}

  /** A label that wraps rather than being cut off, found by its id. */
  public static Label label(String id, String... styles) {
    Label label = new Label();
    label.setId(id);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A label with words in it that never change. */
  public static Label fixed(String words, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    label.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    return label;
  }
}
