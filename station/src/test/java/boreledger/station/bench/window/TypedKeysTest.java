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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A gauge types at 16 ms a character on a clock of its own; a person takes 200 ms. */
@ExtendWith(ApplicationExtension.class)
class TypedKeysTest {
  private static final double GAUGE_S = 0.016;
  private static final double PERSON_S = 0.2;
  private static final double PULSE_S = 0.016;

  private final TypedValues values = new TypedValues();
  private final KeyboardLine line = new KeyboardLine(Bytes.EMPTY, () -> 0);
  private final List<String> pressed = new ArrayList<>();
  private TypedKeys keys;
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
    keys = new TypedKeys(stage, values, () -> nowS);
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

  @ParameterizedTest
  @ValueSource(doubles = {0.06, 0.4, 3})
  void aStallOfTheScreenIsNoPauseOfTheGauge(double stallS) throws Exception {
    String sent = "-12.345\r";
    for (int cut = 1; cut < sent.length(); cut++) {
      typeWithAStall(sent, cut, stallS, 1);
      assertEquals(List.of("-12.345"), typed(), "stall after " + cut);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.06, 0.4, 3})
  void aValueTornByManyStallsIsRefusedAndNeverShortened(double stallS) throws Exception {
    focus(field);
    String sent = "-12.345\r";
    for (int cut = 1; cut < sent.length(); cut++) {
      typeWithAStall(sent, cut, stallS, 0);
      assertEquals(List.of("-12.345"), typed(), "whole after " + cut);
      WaitForAsyncUtils.asyncFx(() -> pass(2)).get();
      int torn = cut;
      WaitForAsyncUtils.asyncFx(
              () -> {
                press(sent, 0, torn);
                for (int i = 0; i < 5; i++) {
                  stall(stallS, 1);
                }
                press(sent, torn, sent.length());
                pass(2);
              })
          .get();
      assertEquals(List.of("spoilt -12.345"), typed(), "torn after " + cut);
    }
  }

  private void typeWithAStall(String sent, int cut, double stallS, int pulses) throws Exception {
    WaitForAsyncUtils.asyncFx(
            () -> {
              press(sent, 0, cut);
              stall(stallS, pulses);
              press(sent, cut, sent.length());
              pass(2);
            })
        .get();
  }

  private void press(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      pass(GAUGE_S);
      press(text.charAt(i));
    }
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
    WaitForAsyncUtils.asyncFx(() -> pass(timeS)).get();
  }

  /** Time of a screen that draws as it should. */
  private void pass(double timeS) {
    for (double leftS = timeS; leftS > 0; leftS -= PULSE_S) {
      nowS += Math.min(leftS, PULSE_S);
      keys.pulse();
    }
  }

  /** A screen that stands still, and then sees what came meanwhile before or after a pulse. */
  private void stall(double timeS, int pulses) {
    nowS += timeS;
    for (int i = 0; i < pulses; i++) {
      keys.pulse();
    }
  }

  /** Types in one go of the screen's thread, so that no pause of the machine comes between. */
  private void type(String text, double stepS) throws Exception {
    WaitForAsyncUtils.asyncFx(
            () -> {
              for (char each : text.toCharArray()) {
                pass(stepS);
                press(each);
              }
              pass(stepS);
            })
        .get();
  }

  private void press(char each) {
    KeyCode code = code(each);
    fire(KeyEvent.KEY_PRESSED, "", code);
    fire(KeyEvent.KEY_TYPED, "" + each, KeyCode.UNDEFINED);
    fire(KeyEvent.KEY_RELEASED, "", code);
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
      case '-' -> KeyCode.MINUS;
      default -> KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(character)));
    };
  }

  private List<String> typed() {
    List<String> typed = new ArrayList<>();
    LineEvent event = line.read(Duration.ZERO);
    while (!(event instanceof LineEvent.Quiet)) {
      if (event instanceof LineEvent.Chunk chunk) {
        typed.add(text(chunk.bytes()));
      } else if (event instanceof LineEvent.Spoilt spoilt) {
        typed.add("spoilt " + text(spoilt.bytes()));
      }
      event = line.read(Duration.ZERO);
    }
    return typed;
  }

  private static String text(Bytes bytes) {
    return new String(bytes.toArray(), StandardCharsets.UTF_8);
  }

  private static void until(Callable<Boolean> happened) throws Exception {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, happened);
  }
}
