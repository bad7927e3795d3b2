package boreledger.station.bench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.keyboard.KeyboardLine;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.station.app.TypedValues;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A gauge types at 16 ms a character on a clock of its own; a person takes 200 ms. */
@ExtendWith(ApplicationExtension.class)
class TypedKeysTest {
  private static final double GAUGE_S = 0.016;
  private static final double PERSON_S = 0.2;

  private final TypedValues values = new TypedValues();
  private final KeyboardLine line = new KeyboardLine(Bytes.EMPTY, () -> 0);
  private final List<String> pressed = new ArrayList<>();
  private Stage stage;
  private TextField field;
  private Button button;
  private int fired;
  private double nowS;

  @Start
  private void open(Stage primary) {
    // The primary one is the same for all tests, and keeps what watches it.
    stage = new Stage();
    field = new TextField();
    button = new Button("press me");
    button.setOnAction(action -> fired++);
    stage.setScene(new Scene(new VBox(field, button)));
    stage
        .getScene()
        .addEventFilter(KeyEvent.KEY_PRESSED, event -> pressed.add("" + event.getCode()));
    new TypedKeys(stage, values, () -> nowS);
    stage.show();
    values.into(line);
  }

  @Test
  void aGaugesValueGoesToTheLineAndNotIntoTheField() throws Exception {
    focus(field);
    type("0.481\r", GAUGE_S);

    assertEquals(List.of("0.481"), typed());
    assertEquals("", field.getText());
    assertEquals(List.of(), pressed);
  }

  @Test
  void lettersOfAGaugesUnitAreNoKeysOfTheWindow() throws Exception {
    type("12.345 mm\r", GAUGE_S);

    assertEquals(List.of("12.345 mm"), typed());
    assertEquals(List.of(), pressed);
  }

  @Test
  void twoValuesAreTwo() throws Exception {
    type("0.481\r0.440\r", GAUGE_S);

    assertEquals(List.of("0.481", "0.440"), typed());
  }

  @Test
  void whatAPersonTypesReachesTheFieldInOrder() throws Exception {
    focus(field);
    type("12.5\r", PERSON_S);
    until(() -> field.getText().equals("12.5"));

    assertEquals(List.of(), typed());
  }

  @Test
  void aPersonsLetterBeforeAValueReachesTheWindow() throws Exception {
    type("m", GAUGE_S);
    step(PERSON_S);
    type("0.481\r", GAUGE_S);

    assertEquals(List.of("M"), pressed);
    assertEquals(List.of("0.481"), typed());
  }

  @Test
  void aPersonsSpaceStillPressesAButton() throws Exception {
    focus(button);
    type(" ", PERSON_S);

    until(() -> fired == 1);
  }

  @Test
  void keysWithoutACharacterPassAtOnce() throws Exception {
    WaitForAsyncUtils.asyncFx(() -> fire(KeyEvent.KEY_PRESSED, "", KeyCode.F9)).get();

    assertEquals(List.of("F9"), pressed);
  }

  @Test
  void whileNoLineListensEverythingPasses() throws Exception {
    values.end();
    focus(field);
    type("0.481\r", GAUGE_S);

    assertEquals("0.481", field.getText());
    assertEquals(List.of(), typed());
  }

  @AfterEach
  void close() throws Exception {
    WaitForAsyncUtils.asyncFx(stage::hide).get();
  }

  private void focus(Node node) throws Exception {
    WaitForAsyncUtils.asyncFx(node::requestFocus).get();
  }

  private void step(double timeS) throws Exception {
    WaitForAsyncUtils.asyncFx(() -> nowS += timeS).get();
  }

  /** Types in one go of the screen's thread, so that no pause of the machine comes between. */
  private void type(String text, double stepS) throws Exception {
    WaitForAsyncUtils.asyncFx(
            () -> {
              for (char each : text.toCharArray()) {
                nowS += stepS;
                KeyCode code = code(each);
                fire(KeyEvent.KEY_PRESSED, "", code);
                fire(KeyEvent.KEY_TYPED, "" + each, KeyCode.UNDEFINED);
                fire(KeyEvent.KEY_RELEASED, "", code);
              }
              nowS += stepS;
            })
        .get();
  }

  private void fire(EventType<KeyEvent> type, String character, KeyCode code) {
    Node owner = stage.getScene().getFocusOwner();
    Event.fireEvent(
        owner == null ? stage.getScene() : owner,
        new KeyEvent(type, character, "", code, false, false, false, false));
  }

  private static KeyCode code(char character) {
    return switch (character) {
      case '\r' -> KeyCode.ENTER;
      case ' ' -> KeyCode.SPACE;
      case '.' -> KeyCode.PERIOD;
      default -> KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(character)));
    };
  }

  private List<String> typed() {
    List<String> typed = new ArrayList<>();
    LineEvent event = line.read(Duration.ZERO);
    while (event instanceof LineEvent.Chunk chunk) {
      typed.add(new String(chunk.bytes().toArray(), StandardCharsets.UTF_8));
      event = line.read(Duration.ZERO);
    }
    return typed;
  }

  private static void until(Callable<Boolean> happened) throws Exception {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, happened);
  }
}
