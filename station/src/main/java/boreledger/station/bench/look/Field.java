package boreledger.station.bench.look;

import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A control with its name over it, which a screen reader says, and a hint beneath. */
public final class Field extends VBox {
  private final Label label = Words.label(null, Styles.FIELD_NAME);
  private final Control control;

  /** A named control without a hint. */
  public Field(String name, Control control) {
    this(name, control, null);
  }

  /**
   * A named control.
   *
   * @param hint a sentence that helps; null for none
   */
  public Field(String name, Control control, String hint) {
    getStyleClass().add(Styles.FIELD);
    this.control = control;
    label.setLabelFor(control);
    rename(name);
    control.setMaxWidth(Double.MAX_VALUE);
    getChildren().addAll(label, control);
    if (hint != null) {
      Label words = Words.label(null, Styles.MUTED);
      words.setText(hint);
      getChildren().add(words);
    }
  }

  /** Gives it another name. */
  public void rename(String name) {
    label.setText(name);
    control.setAccessibleText(name);
  }
}
