package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import boreledger.station.bench.RoomPictures;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.IndexedCell;
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
class LedgerLayoutTest {
  // The first is 1024 x 700 less a window's frame.
  private static final double[][] SIZES = {
    {1016, 660}, {1024, 700}, {1280, 800}, {1920, 1080}, {3840, 2160}
  };
  private static final double ROUNDING_PX = 1.5;
  private static final int FEWEST_WORDS = 9;
  private static final int LONGEST_WORD = 25;

  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  static Stream<String> states() {
    return LedgerStates.ALL.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("states")
  void everythingFits(String state) throws Exception {
    LedgerModel model = LedgerStates.ALL.get(state).reach(folder);
    for (double[] size : SIZES) {
      String where = state + " at " + (int) size[0] + "x" + (int) size[1] + ": ";
      WaitForAsyncUtils.asyncFx(
              () -> {
                Scene scene =
                    RoomPictures.scene(House.empty(folder), LedgerRoom.of(model), size[0], size[1]);
                for (int pass = 0; pass < 5; pass++) {
                  scene.getRoot().applyCss();
                  scene.getRoot().layout();
                }
                check(scene, where);
              })
          .get();
    }
  }

  private static void check(Scene scene, String where) {
    List<String> faults = new ArrayList<>();
    int words = look(scene.getRoot(), scene, faults);
    assertEquals(List.of(), faults, where);
    assertTrue(words >= FEWEST_WORDS, where + "words seen " + words);
  }

  private static int look(Node node, Scene scene, List<String> faults) {
    if (!node.isVisible()) {
      return 0;
    }
    int words = 0;
    if (node instanceof Labeled labeled && hasText(labeled)) {
      words++;
      cutOff(labeled, faults);
    } else if (node instanceof IndexedCell<?> cell && cell.getGraphic() != null) {
      words++;
      outOf(cell, faults);
    }
    if (node instanceof Control) {
      outside(node, scene, faults);
    }
    if (node instanceof Parent parent) {
      covered(parent, faults);
      for (Node child : parent.getChildrenUnmodifiable()) {
        words += look(child, scene, faults);
      }
    }
    return words;
  }

  private static boolean hasText(Labeled labeled) {
    return labeled.getText() != null && !labeled.getText().isEmpty();
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

  /** What a cell shows stays within it, and a word of it is not broken. */
  private static void outOf(IndexedCell<?> cell, List<String> faults) {
    Bounds graphic = cell.getGraphic().localToScene(cell.getGraphic().getLayoutBounds());
    Bounds whole = cell.localToScene(cell.getLayoutBounds());
    boolean within =
        graphic.getMinX() >= whole.getMinX() - ROUNDING_PX
            && graphic.getMaxX() <= whole.getMaxX() + ROUNDING_PX
            && graphic.getMinY() >= whole.getMinY() - ROUNDING_PX
            && graphic.getMaxY() <= whole.getMaxY() + ROUNDING_PX;
    if (!within) {
      faults.add("out of its cell: " + cell.getAccessibleText() + graphic + whole);
    }
    if (cell.getGraphic() instanceof Text text && text.getText().matches("\\S+( \\S+)?")) {
      Text probe = new Text(text.getText());
      probe.setFont(text.getFont());
      if (probe.getLayoutBounds().getWidth() > text.getWrappingWidth() + ROUNDING_PX
          && !text.getText().contains(" ")) {
        faults.add("broken within a word: " + text.getText());
      }
    }
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
    if (!inside) {
      faults.add("outside the window: " + name(node));
    }
  }

  private static boolean isScrolled(Node node) {
    for (Node up = node.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane || up.getStyleClass().contains("virtual-flow")) {
        return true;
      }
    }
    return false;
  }

  private static void covered(Parent parent, List<String> faults) {
    if (!(parent instanceof Pane) || parent instanceof StackPane) {
      return;
    }
    List<Node> siblings =
        parent.getChildrenUnmodifiable().stream()
            .filter(node -> node.isVisible() && node.isManaged())
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
