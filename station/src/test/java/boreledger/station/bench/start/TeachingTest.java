package boreledger.station.bench.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.Reads;
import boreledger.station.app.GaugeTrial;
import boreledger.station.app.Pty;
import boreledger.station.app.Workshop;
import boreledger.station.bench.ChosenFile;
import boreledger.station.bench.House;
import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A gauge at a pseudo-terminal is taught in the real room, by keyboard alone. */
@Timeout(180)
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo-terminals made by socat")
class TeachingTest {
  private static final int MOST_TABS = 60;
  private static final int PATIENCE_S = 30;

  @TempDir Path folder;
  private final FxRobot robot = new FxRobot();
  private final FakeStart program = new FakeStart();
  private final Memory memory = new Memory(null);
  private final ChosenFile files = new ChosenFile();
  private final ExecutorService background = Executors.newSingleThreadExecutor();
  private StartModel model;
  private Stage stage;
  private Pty pty;

  @BeforeEach
  void aGaugeThatNoProfileKnows() throws Exception {
    pty = Pty.in(folder);
    stage = FxToolkit.registerPrimaryStage();
    House house = House.empty(folder);
    Surroundings own = house.around();
    Surroundings around =
        new Surroundings(
            own.workshop(),
            own.results(),
            own.appearance(),
            background,
            Platform::runLater,
            own.go());
    robot.interact(
        () -> {
          model = new StartModel(program, around, memory, "bench", 1);
          around.workshop().set(new Workshop(folder.resolve("none.db")));
          model.gauge().practising().set(false);
          stage.setScene(
              RoomPictures.scene(house, StartRoom.of(model, house.appearance(), files), 1280, 800));
          stage.show();
          stage.requestFocus();
        });
    robot.interact(() -> model.gauge().port().set(pty.port()));
    reach("teach");
    robot.push(KeyCode.SPACE);
    until(() -> "lesson-begin".equals(focus()));
  }

  @AfterEach
  void tidyUp() throws Exception {
    robot.interact(() -> model.lesson().stop());
    FxToolkit.cleanupStages();
    FxToolkit.hideStage();
    background.shutdownNow();
    pty.close();
  }

  @Test
  void aWholeLessonWritesAProfileThatIsChosenAndRemembered() throws Exception {
    robot.push(KeyCode.SPACE);
    until(() -> words("lesson-ask").startsWith("Set the gauge to 0.000 mm"));
    assertTrue(words("lesson-listening").startsWith("Listening at 9600 baud"));
    int presses = 0;
    while (!isCertain() && presses < 9) {
      presses++;
      show(typed());
      int shown = presses;
      until(() -> model.lesson().told().get().shown().size() == shown);
    }
    assertTrue(isCertain(), words("lesson-known"));
    assertTrue(words("lesson-heard").contains("G +5.000..   47 20 2b 35"), words("lesson-heard"));

    until(() -> "lesson-name".equals(focus()));
    robot.write("Old faithful", 0);
    write("lesson-max-error", "0,003");
    files.chosen = folder.resolve("old.gauge.toml");
    reach("lesson-file-choose");
    robot.push(KeyCode.SPACE);
    until(() -> field("lesson-file").getText().equals(files.chosen.toString()));
    assertEquals(".gauge.toml", files.asked.get(0).ending());
    reach("lesson-write");
    robot.push(KeyCode.SPACE);

    until(() -> words("taught").contains("old.gauge.toml"));
    GaugeProfile profile = GaugeProfiles.read(folder.resolve("old.gauge.toml"));
    assertEquals("Old faithful", profile.name());
    assertEquals(Reads.DEVIATION, profile.reads());
    assertEquals(0.003, profile.maxErrorMm());
    assertEquals(files.chosen, model.gauge().profile().get().gauge());
    assertFalse(model.lesson().going().get());
    assertEquals(files.chosen, memory.recent("gauge").get(0));
    assertEquals(pty.port(), memory.get("port").orElseThrow());
  }

  @Test
  void whatIsWrongIsToldAtItsFieldAndNothingIsWritten() throws Exception {
    Path there = Files.writeString(folder.resolve("there.gauge.toml"), "precious");
    robot.push(KeyCode.SPACE);
    until(() -> "lesson-typed".equals(focus()) && !words("lesson-ask").isEmpty());
    write("lesson-typed", "warm");
    robot.push(KeyCode.ENTER);
    until(() -> words("lesson-typed-problem").startsWith("warm is no value"));
    while (!isCertain()) {
      int shown = model.lesson().told().get().shown().size() + 1;
      String next = model.lesson().told().get().learned().next().mm().toPlainString();
      write("lesson-typed", next);
      show(next);
      until(() -> model.lesson().told().get().shown().size() == shown);
    }

    write("lesson-max-error", "0");
    write("lesson-file", there.toString());
    reach("lesson-write");
    robot.push(KeyCode.SPACE);
    until(() -> words("lesson-max-error-problem").contains("above 0"));
    assertTrue(words("lesson-name-problem").startsWith("Give it a name"));

    write("lesson-name", "Mine");
    write("lesson-max-error", "");
    reach("lesson-write");
    robot.push(KeyCode.SPACE);
    until(() -> words("lesson-file-problem").contains("is there already"));
    assertEquals("precious", Files.readString(there));
  }

  @Test
  void escapeLeavesAtAnyMomentAndThePortIsFree() throws Exception {
    robot.push(KeyCode.SPACE);
    until(() -> "lesson-typed".equals(focus()) && !words("lesson-ask").isEmpty());
    show("0.000");

    robot.push(KeyCode.ESCAPE);

    until(() -> shown("begin"));
    assertFalse(model.lesson().going().get());
    GaugeTrial.open(Path.of("ascii-line-size"), pty.port()).close();
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(1, all.count(), "the port alone");
    }
  }

  @Test
  void lettersGoIntoTheFieldAndNotIntoTheWindowsKeys() throws Exception {
    robot.push(KeyCode.SPACE);
    until(() -> "lesson-typed".equals(focus()) && !words("lesson-ask").isEmpty());

    robot.write("gmbu", 0);

    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("gmbu", field("lesson-typed").getText(), "in place of what was offered");
  }

  /** Sets the gauge, presses its key, and says what it showed. */
  private void show(String mm) throws Exception {
    pty.send("G " + (mm.startsWith("-") ? mm : "+" + mm) + "\r\n");
    until(() -> words("lesson-heard").contains(mm));
    reach("lesson-typed");
    robot.push(KeyCode.ENTER);
  }

  private boolean isCertain() {
    return model.lesson().keep().profile().get() != null;
  }

  private String typed() throws Exception {
    until(() -> !field("lesson-typed").getText().isEmpty());
    return field("lesson-typed").getText();
  }

  private void write(String id, String text) {
    reach(id);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.push(KeyCode.DELETE);
    robot.write(text, 0);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(text, field(id).getText());
  }

  private void reach(String id) {
    WaitForAsyncUtils.waitForFxEvents();
    for (int tab = 0; tab < MOST_TABS && !id.equals(focus()); tab++) {
      robot.push(KeyCode.TAB);
      WaitForAsyncUtils.waitForFxEvents();
    }
    assertEquals(id, focus(), "where Tab leads");
  }

  private String focus() {
    Node owner = stage.getScene().getFocusOwner();
    return owner == null ? "" : String.valueOf(owner.getId());
  }

  private TextField field(String id) {
    return (TextField) stage.getScene().lookup("#" + id);
  }

  private boolean shown(String id) {
    return stage.getScene().lookup("#" + id) != null;
  }

  private String words(String id) {
    return stage.getScene().lookup("#" + id) instanceof Labeled labeled && labeled.getText() != null
        ? labeled.getText()
        : "";
  }

  private void until(Callable<Boolean> happened) throws Exception {
    try {
      WaitForAsyncUtils.waitFor(
          PATIENCE_S, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(happened).get());
    } catch (TimeoutException e) {
      String seen = words("lesson-known") + " | " + words("lesson-heard") + " | " + focus();
      throw new AssertionError(seen, e);
    }
  }
}
