package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import boreledger.station.bench.LayoutCheck;
import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.words.Language;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.IndexedCell;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
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

  @ParameterizedTest
  @ValueSource(
      strings = {
        "movable",
        "moved",
        "about",
        "amended",
        "refused-amendment",
        "comparing",
        "comparing-nothing",
        "compared",
        "compared-gaps"
      })
  void fitsInGermanToo(String state) throws Exception {
    Language.speak(Language.GERMAN);
    everythingFits(state);
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  private static void check(Scene scene, String where) {
    LayoutCheck found = LayoutCheck.of(scene);
    List<String> faults = new ArrayList<>(found.faults());
    int cells = look(scene.getRoot(), faults);
    assertEquals(List.of(), faults, where);
    assertTrue(found.words() + cells >= FEWEST_WORDS, where + "words seen " + found.words());
  }

  /** Looks at what the cells of lists and tables show, and counts them. */
  private static int look(Node node, List<String> faults) {
    if (!node.isVisible()) {
      return 0;
    }
    int cells = 0;
    if (node instanceof IndexedCell<?> cell && cell.getGraphic() != null) {
      cells++;
      outOf(cell, faults);
    }
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        cells += look(child, faults);
      }
    }
    return cells;
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
}
