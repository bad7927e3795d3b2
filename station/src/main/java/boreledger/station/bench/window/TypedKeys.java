package boreledger.station.bench.window;

import boreledger.drivers.keyboard.Keystrokes;
import boreledger.drivers.keyboard.TypingSpeed;
import boreledger.station.app.TypedValues;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.DoubleSupplier;
import javafx.animation.PauseTransition;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import javafx.util.Duration;

/**
 * Catches what a gauge types while a line listens to it. Keys that give characters are held back
 * until it is known who typed them: a gauge's value goes to the line, and everything else to where
 * it was typed, in its order and with its releases.
 */
public final class TypedKeys {
  private static final Duration PAUSE = Duration.seconds(1.2 * TypingSpeed.LONGEST_GAP_S);

  private final Window window;
  private final TypedValues values;
  private final DoubleSupplier clockS;
  private final TypingSpeed speed = new TypingSpeed();
  private final PauseTransition pause = new PauseTransition(PAUSE);
  // One list for each character that is held back; the last one is still without its character.
  private final Deque<List<KeyEvent>> held = new ArrayDeque<>();
  private List<KeyEvent> begun = new ArrayList<>();
  private boolean replaying;

  /**
   * Watches a window.
   *
   * @param values takes what a gauge types
   * @param clockS a clock that never runs back, in seconds
   */
  public TypedKeys(Window window, TypedValues values, DoubleSupplier clockS) {
    this.window = window;
    this.values = values;
    this.clockS = clockS;
    pause.setOnFinished(over -> paused());
    window.addEventFilter(KeyEvent.ANY, this::key);
  }

  private void key(KeyEvent event) {
    boolean mine = !replaying && (values.isListening() || isHolding()) && isOfACharacter(event);
    if (!mine) {
      return;
    }
    if (event.getEventType() == KeyEvent.KEY_RELEASED) {
      released(event);
    } else {
      event.consume();
      begun.add(event);
      if (event.getEventType() == KeyEvent.KEY_TYPED) {
        typed(event);
      }
      pause.playFromStart();
    }
  }

  private static boolean isOfACharacter(KeyEvent event) {
    KeyCode code = event.getCode();
    boolean none =
        code.isFunctionKey()
            || code.isModifierKey()
            || code.isMediaKey()
            || code.isArrowKey()
            || code.isNavigationKey()
            || code == KeyCode.ESCAPE;
    return !none && !event.isControlDown() && !event.isMetaDown();
  }

  /** A release belongs to whatever was pressed last; once nothing is held it goes its way. */
  private void released(KeyEvent event) {
    if (!begun.isEmpty()) {
      begun.add(event);
      event.consume();
    } else if (!held.isEmpty()) {
      held.getLast().add(event);
      event.consume();
    }
  }

  private void typed(KeyEvent event) {
    held.addLast(begun);
    begun = new ArrayList<>();
    String characters = event.getCharacter();
    char character = characters.isEmpty() ? '\0' : characters.charAt(0);
    for (Keystrokes known : speed.take(character, clockS.getAsDouble())) {
      sort(known);
    }
  }

  private void paused() {
    speed.pause(clockS.getAsDouble()).ifPresent(this::sort);
    replay(begun);
    begun = new ArrayList<>();
  }

  private void sort(Keystrokes known) {
    boolean value = known instanceof Keystrokes.Value;
    // A value's text lacks the character that ended it.
    int characters = known.text().length() + (value ? 1 : 0);
    for (int i = 0; i < characters && !held.isEmpty(); i++) {
      List<KeyEvent> events = held.removeFirst();
      if (!value) {
        replay(events);
      }
    }
    if (value) {
      values.typed(known.text());
    }
  }

  private void replay(List<KeyEvent> events) {
    replaying = true;
    try {
      for (KeyEvent each : events) {
        EventTarget target = target();
        Event.fireEvent(target, each.copyFor(target, target));
      }
    } finally {
      replaying = false;
    }
  }

  /** Whatever has the focus now: it may have moved on, and what had it may be gone. */
  private EventTarget target() {
    Node owner = window.getScene().getFocusOwner();
    return owner == null ? window.getScene() : owner;
  }

  private boolean isHolding() {
    return !held.isEmpty() || !begun.isEmpty();
  }
}
