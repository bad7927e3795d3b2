package boreledger.station.bench;

import boreledger.station.bench.look.Drawing;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;

/**
 * What is wrong with the layout of a scene: words that are cut off, stand outside or cover others.
 *
 * @param words how many labels were looked at
 */
public record LayoutCheck(List<String> faults, int words) {
  private static final double ROUNDING_PX = 1.01;
  private static final int LONGEST_WORD = 25;

  /** Looks at a scene that was laid out. */
  public static LayoutCheck of(Scene scene) {
    List<String> faults = new ArrayList<>();
    int words = 0;
    for (Node node : visible(scene.getRoot())) {
      if (node instanceof Labeled labeled && hasWords(labeled)) {
        words++;
        cutOff(labeled, faults);
      }
      outside(node, scene, faults);
      if (node instanceof Parent parent) {
        covered(parent, faults);
      }
    }
    return new LayoutCheck(List.copyOf(faults), words);
  }

  /** The same, and looks for words that stick out of their pane. */
  public static LayoutCheck closely(Scene scene) {
    LayoutCheck found = of(scene);
    List<String> faults = new ArrayList<>(found.faults());
    for (Node node : visible(scene.getRoot())) {
      if (node instanceof Labeled labeled && hasWords(labeled)) {
        sticksOut(labeled, faults);
      }
    }
    return new LayoutCheck(List.copyOf(faults), found.words());
  }

  private static List<Node> visible(Parent root) {
    List<Node> nodes = new ArrayList<>();
    collect(root, nodes);
    return nodes;
  }

  private static void collect(Node node, List<Node> nodes) {
    if (!node.isVisible()) {
      return;
    }
    nodes.add(node);
    if (node instanceof Parent parent && !(node instanceof TextField)) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, nodes));
    }
  }

  private static boolean hasWords(Labeled labeled) {
    return labeled.getText() != null && !labeled.getText().isEmpty();
  }

  private static void cutOff(Labeled labeled, List<String> faults) {
    Text shown = (Text) labeled.lookup(".text");
    if (shown == null || !shown.getText().equals(labeled.getText())) {
      faults.add("cut off: " + name(labeled));
    } else if (shown.getLayoutBounds().getWidth() > labeled.getWidth() + ROUNDING_PX) {
      faults.add("too wide: " + name(labeled));
    } else if (labeled.getHeight() + ROUNDING_PX < shown.getLayoutBounds().getHeight()) {
      faults.add("too low: " + name(labeled));
    } else if (labeled.getWidth() + ROUNDING_PX < widestWordPx(labeled, shown)) {
      faults.add("broken within a word: " + name(labeled));
    }
  }

  /** Words that a pane has no room for are drawn all the same, over whatever is beside the pane. */
  private static void sticksOut(Labeled labeled, List<String> faults) {
    Bounds words = labeled.localToScene(labeled.getLayoutBounds());
    for (Parent up = labeled.getParent(); up != null && !isScroll(up); up = up.getParent()) {
      Bounds pane = up.localToScene(up.getLayoutBounds());
      boolean inside =
          words.getMinX() >= pane.getMinX() - ROUNDING_PX
              && words.getMinY() >= pane.getMinY() - ROUNDING_PX
              && words.getMaxX() <= pane.getMaxX() + ROUNDING_PX
              && words.getMaxY() <= pane.getMaxY() + ROUNDING_PX;
      if (!inside) {
        faults.add("sticks out of " + name(up) + ": " + name(labeled));
        return;
      }
    }
  }

  /** A path has no place to break; everything else is made of words. */
  private static double widestWordPx(Labeled labeled, Text shown) {
    double widest = 0;
    for (String word : labeled.getText().split("\\s+")) {
      if (word.length() <= LONGEST_WORD) {
        Text probe = new Text(word);
        probe.setFont(shown.getFont());
        widest = Math.max(widest, probe.getLayoutBounds().getWidth());
      }
    }
    return widest;
  }

  private static void outside(Node node, Scene scene, List<String> faults) {
    if (isScrolled(node)) {
      return;
    }
    Bounds bounds = node.localToScene(node.getLayoutBounds());
    boolean inside =
        bounds.getMinX() >= -ROUNDING_PX
            && bounds.getMinY() >= -ROUNDING_PX
            && bounds.getMaxX() <= scene.getWidth() + ROUNDING_PX
            && bounds.getMaxY() <= scene.getHeight() + ROUNDING_PX;
    if (!inside && (node instanceof Control || isFigureWords(node))) {
      faults.add("outside the window: " + name(node));
    }
  }

  private static boolean isScrolled(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (isScroll(up)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isScroll(Node node) {
    return node instanceof ScrollPane
        || isViewport(node)
        || isViewport(node.getParent())
        || node.getStyleClass().contains("virtual-flow");
  }

  /** It and its only child are as large as what is seen, not as what is scrolled. */
  private static boolean isViewport(Node node) {
    return node != null && node.getStyleClass().contains("viewport");
  }

  /** Panes stand side by side; in drawings only words may not cover words. */
  private static void covered(Parent parent, List<String> faults) {
    boolean isDrawing = parent instanceof Drawing;
    if (!isDrawing && (!(parent instanceof Pane) || parent instanceof StackPane)) {
      return;
    }
    List<Node> siblings =
        parent.getChildrenUnmodifiable().stream()
            .filter(Node::isVisible)
            .filter(node -> isDrawing ? node instanceof Labeled : node.isManaged())
            .toList();
    for (int i = 0; i < siblings.size(); i++) {
      for (int j = i + 1; j < siblings.size(); j++) {
        if (cover(siblings.get(i), siblings.get(j))) {
          faults.add(name(siblings.get(i)) + " and " + name(siblings.get(j)) + " overlap");
        }
      }
    }
  }

  private static boolean cover(Node one, Node other) {
    Bounds a = one.localToScene(one.getLayoutBounds());
    Bounds b = other.localToScene(other.getLayoutBounds());
    double width = Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX());
    double height = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
    return width > ROUNDING_PX && height > ROUNDING_PX;
  }

  private static String name(Node node) {
    String words =
        node instanceof Labeled labeled
            ? " \"" + labeled.getText() + "\""
            : node instanceof Text text ? " \"" + text.getText() + "\"" : "";
    return node.getClass().getSimpleName() + " " + node.getId() + words;
  }

  /** Words of a figure that reach beyond the window. */
  private static boolean isFigureWords(Node node) {
    return node instanceof Text && node.getParent() instanceof Drawing;
  }
}
