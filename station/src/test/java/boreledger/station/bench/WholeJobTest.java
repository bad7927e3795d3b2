package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.Demo;
import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The whole job in the real window on its first day, by keyboard alone: practise, gauge all bores
 * and the gaps of a ring, read what they mean, file in passes until it says stop, seal, print.
 */
class WholeJobTest {
  private static final int MOST_TABS = 80;
  private static final int PATIENCE_S = 90;

  @TempDir Path home;
  private final FxRobot robot = new FxRobot();
  private String userHome;
  private String programHome;
  private Stage stage;
  private Application application;

  @BeforeEach
  void aFirstDay() throws Exception {
    userHome = System.setProperty("user.home", home.toString());
    programHome = System.setProperty(Demo.HOME, "..");
    stage = FxToolkit.registerPrimaryStage();
    Workshop workshop = new Workshop(home.resolve("none.db"));
    BenchApplication.join(
        new BenchWiring(workshop, null, 400, new TypedValues(), event -> {}, desk -> {}));
    application = FxToolkit.setupApplication(BenchApplication.class);
  }

  @AfterEach
  void tidyUp() throws Exception {
    FxToolkit.cleanupApplication(application);
    FxToolkit.cleanupStages();
    FxToolkit.hideStage();
    System.setProperty("user.home", userHome);
    if (programHome == null) {
      System.clearProperty(Demo.HOME);
    } else {
      System.setProperty(Demo.HOME, programHome);
    }
  }

  @Test
  void isDoneWithoutTheMouseOrTheCommandLine() throws Exception {
    reach("practise-now");
    robot.push(KeyCode.SPACE);
    until(() -> words("closing-title").equals("Plan done"));
    assertEquals("20 of 20 readings", words("progress-words"));

    robot.push(KeyCode.CONTROL, KeyCode.DIGIT3);
    until(
        () ->
            words("bores-advice").contains("cylinders")
                || words("bores-advice").contains("oversize"));
    assertTrue(words("bores-title").contains("Cylinder 1"), words("bores-title"));

    gaugeTheTopRingsGaps();
    fileUntilItSaysStop();
    sealAndPrint();
  }

  private void gaugeTheTopRingsGaps() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
    until(() -> words("start-job").equals("Pumphouse three"));
    reach("choice-1");
    robot.push(KeyCode.SPACE);
    reach("begin");
    robot.push(KeyCode.SPACE);
    until(() -> words("progress-words").equals("9 of 9 readings"));
    until(() -> words("closing-title").equals("Plan done"));
  }

  private void fileUntilItSaysStop() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT4);
    until(() -> words("filing-advice").contains("left. File a little"));
    type("filed-by", "Turner");
    double gapMm = 0.2;
    for (int pass = 0; pass < 40 && !words("filing-advice").startsWith("STOP"); pass++) {
      double beforeMm = gapMm;
      gapMm = Math.min(0.604, gapMm + 0.05);
      type("turns", "10");
      type("gap-after", String.format(Locale.ROOT, "%.4f", gapMm));
      reach("add-pass");
      robot.push(KeyCode.SPACE);
      String passed = String.format(Locale.ROOT, "%.3f mm (Turner)", gapMm);
      until(() -> words("passes").endsWith(passed));
      assertTrue(gapMm > beforeMm || words("filing-advice").startsWith("STOP"));
    }
    assertTrue(words("filing-advice").startsWith("STOP"), words("filing-advice"));
  }

  private void sealAndPrint() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT5);
    until(() -> !words("ledger-file").isEmpty());
    reach("choice-2");
    robot.push(KeyCode.SPACE);
    type("ledger-seal-name", "Turner");
    reach("ledger-seal");
    robot.push(KeyCode.SPACE);
    Path folder = home.resolve(".local/share/boreledger");
    until(() -> holds(folder, ".seal"));

    back("choice-3");
    robot.push(KeyCode.SPACE);
    reach("ledger-sheet-write");
    robot.push(KeyCode.SPACE);
    until(() -> holds(folder, ".pdf"));
  }

  /** Goes on with Tab until a control has the focus. */
  private void reach(String id) {
    for (int tab = 0; tab < MOST_TABS; tab++) {
      Node owner = stage.getScene().getFocusOwner();
      if (owner != null && id.equals(owner.getId())) {
        return;
      }
      robot.push(KeyCode.TAB);
      WaitForAsyncUtils.waitForFxEvents();
    }
    throw new AssertionError("no Tab leads to " + id);
  }

  /** Goes back with Shift and Tab until a control has the focus. */
  private void back(String id) {
    for (int tab = 0; tab < MOST_TABS; tab++) {
      Node owner = stage.getScene().getFocusOwner();
      if (owner != null && id.equals(owner.getId())) {
        return;
      }
      robot.push(KeyCode.SHIFT, KeyCode.TAB);
      WaitForAsyncUtils.waitForFxEvents();
    }
    throw new AssertionError("no way back to " + id);
  }

  private static boolean holds(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.anyMatch(file -> file.toString().endsWith(ending));
    }
  }

  private void type(String id, String text) {
    reach(id);
    TextInputControl field = (TextInputControl) stage.getScene().getFocusOwner();
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write(text, 0);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(text, field.getText());
  }

  private String words(String id) {
    return WaitForAsyncUtils.waitForAsyncFx(
        5_000,
        () -> {
          Node node = stage.getScene().lookup("#" + id);
          return node instanceof Labeled labeled ? labeled.getText() : "";
        });
  }

  private void until(Callable<Boolean> happened) throws Exception {
    try {
      WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, happened);
    } catch (TimeoutException e) {
      throw new AssertionError(seen(), e);
    }
  }

  /** What the window says, for a failure's message. */
  private String seen() {
    return WaitForAsyncUtils.waitForAsyncFx(
        5_000,
        () ->
            stage.getScene().getRoot().lookupAll(".label").stream()
                .map(node -> ((Labeled) node).getText())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(" | ")));
  }
}
