package boreledger.station.bench.look;

import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Shape;

/** A picture made of shapes, drawn anew when what it shows or its size changes. */
public abstract class Drawing extends Region {
  /** An empty picture, found by its id. */
  protected Drawing(String id) {
    setId(id);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(0, 0);
    widthProperty().addListener(changed -> resized());
    heightProperty().addListener(changed -> resized());
  }

  /** Shapes made while the window is laid out would be black until its next picture. */
  private void resized() {
    redraw();
    applyCss();
  }

  /** Draws again if there is room to draw in. */
  protected final void redraw() {
    getChildren().clear();
    if (getWidth() > 1 && getHeight() > 1) {
      draw(getWidth(), getHeight());
    }
  }

  /** Draws into an empty area, in pixels from its upper left corner. */
  protected abstract void draw(double width, double height);

  /** Adds a shape with its style classes. */
  protected final <T extends Shape> T add(T shape, String... styles) {
    shape.getStyleClass().addAll(styles);
    shape.setManaged(false);
    getChildren().add(shape);
    return shape;
  }

  /** Words in a box, centred from top to bottom. */
  protected final Label addWords(
      String words, double x, double y, double width, double height, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    label.setManaged(false);
    getChildren().add(label);
    label.resizeRelocate(x, y, width, height);
    return label;
  }

  /** Sets the size of words, in pixels. */
  protected static void sizeOf(Node words, double px) {
    words.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx", px));
  }
}
