package boreledger.station.bench.window;

import boreledger.drivers.keyboard.Keystrokes;
import boreledger.drivers.keyboard.TypingSpeed;
import boreledger.station.app.TypedValues;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.DoubleSupplier;
import javafx.animation.AnimationTimer;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;

/**
 * Catches what a gauge types while a line listens to it. Keys that give characters are held back
 * until it is known who typed them: a gauge's value goes to the line, and everything else to where
 * it was typed, in its order and with its releases.
 */
public final class TypedKeys {
  // Beyond it, what was handed on as typed is not the beginning of what comes.
  private static final double FOLLOWED_S = 1.5;

  private final Window window;
  private final TypedValues values;
  private final TypistClock clock;
  private final TypingSpeed speed = new TypingSpeed();
  private final AnimationTimer pulses =
      new AnimationTimer() {
        @Override
        public void handle(long nowNs) {
          pulse();
        }
      };
  // One list for each character that is held back; the last one is still without its character.
  private final Deque<List<KeyEvent>> held = new ArrayDeque<>();
  private List<KeyEvent> begun = new ArrayList<>();
  private double lastS;
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
    clock = new TypistClock(clockS);
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
      lastS = clock.look();
      if (event.getEventType() == KeyEvent.KEY_TYPED) {
        typed(event);
      }
      clock.follow(true);
      pulses.start();
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
    for (Keystrokes known : speed.take(character, lastS)) {
      sort(known);
    }
  }

  /** Looks at the clock; called with every pulse of the screen while keys are followed. */
  void pulse() {
    double nowS = clock.look();
    speed.pause(nowS).ifPresent(this::sort);
    if (nowS - lastS > TypingSpeed.LONGEST_GAP_S) {
      replay(begun);
      begun = new ArrayList<>();
    }
    if (nowS - lastS > FOLLOWED_S) {
      pulses.stop();
      clock.follow(false);
    }
  }

  private void sort(Keystrokes known) {
    boolean value = known instanceof Keystrokes.Value;
    boolean typed = known instanceof Keystrokes.Typed;
    // A value's text lacks the character that ended it.
    int characters = known.text().length() + (value ? 1 : 0);
    for (int i = 0; i < characters && !held.isEmpty(); i++) {
      List<KeyEvent> events = held.removeFirst();
      if (typed) {
        replay(events);
      }
    }
    if (value) {
      values.typed(known.text());
    } else if (known instanceof Keystrokes.Pieces pieces) {
      values.inPieces(pieces.whole());
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
