package boreledger.station.bench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.words.Language;
import boreledger.station.job.DisplayUnit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** At every size no word of the form is cut off and nothing covers anything else. */
class JobFormLayoutTest {
  private static final double ROUNDING_PX = 1.01;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @ParameterizedTest
  @CsvSource({
    "ENGLISH,1016,660", "ENGLISH,1024,700", "ENGLISH,1280,800", "ENGLISH,1920,1080",
    "ENGLISH,3840,2160", "GERMAN,1016,660", "GERMAN,1024,700", "GERMAN,1280,800",
    "GERMAN,1920,1080", "GERMAN,3840,2160"
  })
  void everythingFitsWhateverIsWrong(Language language, double width, double height)
      throws Exception {
    Language.speak(language);
    WaitForAsyncUtils.asyncFx(
            () -> {
              check(Forms.SAMPLE, false, width, height);
              check(Forms.SAMPLE, true, width, height);
              check(null, false, width, height);
              return null;
            })
        .get();
  }

  private static void check(Path file, boolean isWrong, double width, double height)
      throws Exception {
    Appearance appearance = new Appearance();
    appearance.unit().set(isWrong ? DisplayUnit.IN : null);
    JobForm form = Forms.form(file, appearance, saved -> {}, () -> {});
    Scene scene = Forms.scene(form, appearance, new double[] {width, height}, Light.DARK);
    JobFormSnapshots.layOut(scene);
    if (isWrong) {
      for (String id :
          List.of("more-liner-material", "more-choke", "add-piston", "add-ring_mark")) {
        ((Button) scene.lookup("#" + id)).fire();
      }
      ((TextField) scene.lookup("#taper-max")).setText("97");
      ((TextField) scene.lookup("#depths")).setText("12,60,108");
      ((TextField) scene.lookup("#ring-1-gap-max")).setText("0.01");
      JobFormSnapshots.layOut(scene);
    }
    List<String> faults = new ArrayList<>();
    int words = look(scene.getRoot(), scene, faults, false);
    assertEquals(List.of(), faults, width + "x" + height + (isWrong ? " wrong" : ""));
    assertTrue(words > 60, "words " + words);
  }

  private static int look(Node node, Scene scene, List<String> faults, boolean isScrolled) {
    if (!node.isVisible()) {
      return 0;
    }
    int words = 0;
    if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
      words++;
      Text shown = (Text) labeled.lookup(".text");
      if (shown == null || !shown.getText().equals(labeled.getText())) {
        faults.add("cut off: " + labeled.getText());
      }
      Bounds at = node.localToScene(node.getLayoutBounds());
      boolean isOut =
          at.getMaxX() > scene.getWidth() + ROUNDING_PX
              || !isScrolled && at.getMaxY() > scene.getHeight() + ROUNDING_PX;
      if (isOut) {
        faults.add("outside: " + labeled.getText());
      }
    }
    if (node instanceof Parent parent) {
      if (node instanceof Pane && !(node instanceof StackPane)) {
        covered(parent, faults);
      }
      for (Node child : parent.getChildrenUnmodifiable()) {
        words += look(child, scene, faults, isScrolled || node instanceof ScrollPane);
      }
    }
    return words;
  }

  private static void covered(Parent parent, List<String> faults) {
    List<Node> nodes =
        parent.getChildrenUnmodifiable().stream()
            .filter(node -> node.isVisible() && node.isManaged())
            .toList();
    for (int i = 0; i < nodes.size(); i++) {
      for (int j = i + 1; j < nodes.size(); j++) {
        Bounds a = nodes.get(i).getBoundsInParent();
        Bounds b = nodes.get(j).getBoundsInParent();
        double x = Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX());
        double y = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
        if (x > ROUNDING_PX && y > ROUNDING_PX) {
          faults.add(nodes.get(i) + " and " + nodes.get(j) + " overlap");
        }
      }
    }
  }
}
