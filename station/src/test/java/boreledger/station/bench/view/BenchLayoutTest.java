package boreledger.station.bench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.look.Drawing;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** At every size nothing is cut off, nothing covers anything else, nothing leaves the window. */
class BenchLayoutTest {
  private static final double ROUNDING_PX = 1.01;
  private static final int FEWEST_WORDS = 9;
  private static final int LONGEST_WORD = 25;
  private static final double LEAST_DIGITS_PX = 40;

  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  static Stream<String> states() throws Exception {
    Path names = Files.createTempDirectory("bench-layout");
    try (BenchStates states = new BenchStates(names)) {
      List<String> all = new ArrayList<>();
      states.names().forEach(all::add);
      return all.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("states")
  void everythingFits(String state) throws Exception {
    try (BenchStates states = new BenchStates(folder)) {
      states.play(state);
      for (double[] size : Scenes.SIZES) {
        String where = state + " at " + (int) size[0] + "x" + (int) size[1] + ": ";
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Scene scene = Scenes.bench(states.model(), size);
                  Scenes.layOut(scene);
                  check(scene, where);
                })
            .get();
      }
    }
  }

  private static void check(Scene scene, String where) {
    List<Node> nodes = Scenes.visible(scene.getRoot());
    List<String> faults = new ArrayList<>();
    int words = 0;
    for (Node node : nodes) {
      if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
        words++;
        cutOff(labeled, faults);
      }
      outside(node, scene, faults);
      if (node instanceof Parent parent) {
        covered(parent, faults);
      }
      if (node instanceof Digits
          && ((Text) node.lookup(".digit")).getFont().getSize() < LEAST_DIGITS_PX) {
        faults.add("digits too small to be read from afar");
      }
    }
    assertEquals(List.of(), faults, where);
    assertTrue(words >= FEWEST_WORDS, where + "words seen " + words);
  }

  private static void cutOff(Labeled labeled, List<String> faults) {
    Text shown = (Text) labeled.lookup(".text");
    if (shown == null || !shown.getText().equals(labeled.getText())) {
      faults.add("cut off: " + name(labeled));
    } else if (shown.getLayoutBounds().getWidth() > labeled.getWidth() + ROUNDING_PX) {
      faults.add("too wide: " + name(labeled));
    } else if (labeled.getWidth() + ROUNDING_PX < widestWordPx(labeled, shown)) {
      faults.add("broken within a word: " + name(labeled));
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
    if (!inside && node instanceof Labeled) {
      faults.add("outside the window: " + name(node));
    }
  }

  private static boolean isScrolled(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof ScrollPane) {
        return true;
      }
    }
    return false;
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
    String words = node instanceof Labeled labeled ? " \"" + labeled.getText() + "\"" : "";
    return node.getClass().getSimpleName() + " " + node.getId() + words;
  }
}
