package boreledger.station.bench;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.LiveChoice;
import boreledger.station.app.LiveGauging;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.Play;
import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A program of its own that gauges end gaps in the real window with a gauge that types, and asks
 * for more than gauging by keys. It prints what the window says. Argument: a folder.
 */
public final class HandsDriver {
  private static final int PATIENCE_S = 60;

  private HandsDriver() {}

  /** Opens the window, gauges by hand, closes it. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[0]);
    LiveRequest request =
        new LiveRequest(
            House.SAMPLES.resolve("pumphouse-three.job.toml"),
            new LiveChoice.Gauge(Path.of("keyboard-line-size"), "keyboard", true),
            Measure.GAP,
            "top",
            null,
            21.3,
            folder.resolve("hands.db"),
            false);
    TypedValues typed = new TypedValues();
    try (LiveGauging gauging = LiveGauging.prepare(request, typed)) {
      Thread hands = new Thread(HandsDriver::work, "hands");
      BenchApplication.show(
          new BenchWiring(
              new Workshop(folder.resolve("hands.db")),
              play -> gauge(gauging, play, hands),
              1,
              typed,
              event -> {},
              desk -> {}));
    }
    System.out.println("returned");
  }

  private static JobResults gauge(LiveGauging gauging, Play play, Thread hands) throws Exception {
    hands.start();
    return gauging.run(play);
  }

  private static void work() {
    try {
      until(() -> words("gauged").equals("End gaps, top ring"));
      gauges("0.480\r", "Taken: ");
      press(KeyCode.S);
      says("Skipped: ");
      gauges("0.470 mm\r", "Taken: cylinder 1, top ring, 108 mm");
      press(KeyCode.Z);
      says("Taken back: ");
      gauges("0.471\r", "Taken: cylinder 1, top ring, 108 mm, 0.4710");
      reach("block");
      press(KeyCode.LEFT);
      press(KeyCode.ENTER);
      says("Going to ");
      reach("cell-2-1");
      press(KeyCode.UP);
      press(KeyCode.ENTER);
      says("To be gauged again: ");
      gauges("0.482\r", "Taken: cylinder 1, top ring, 12 mm");
      press(KeyCode.M);
      until(() -> words("sound").startsWith("Sound off"));
      System.out.println("seen " + words("sound").replace('\n', ' '));
      System.out.println("seen " + words("progress-words"));
    } catch (Exception e) {
      System.out.println("Exception " + e + "; the window says: " + words("saying"));
    } finally {
      onScreen(
          () -> {
            List.copyOf(Window.getWindows()).forEach(Window::hide);
            return null;
          });
    }
  }

  /**
   * A machine that stalls between two characters takes the gauge for a person, so its key may have
   * to be pressed again.
   */
  private static void gauges(String value, String beginning) throws Exception {
    for (int press = 1; !words("saying").startsWith(beginning) && press <= 3; press++) {
      type(value);
      try {
        WaitForAsyncUtils.waitFor(
            15, TimeUnit.SECONDS, () -> words("saying").startsWith(beginning));
      } catch (TimeoutException e) {
        System.out.println("pressed again after " + words("saying"));
      }
    }
    says(beginning);
  }

  private static void says(String beginning) throws Exception {
    until(() -> words("saying").startsWith(beginning));
    System.out.println("seen " + words("saying"));
  }

  /** What a gauge types comes within one turn of the screen's thread. */
  private static void type(String value) {
    onScreen(
        () -> {
          value.chars().forEach(each -> stroke((char) each));
          return null;
        });
  }

  private static void press(KeyCode key) {
    onScreen(
        () -> {
          fire(KeyEvent.KEY_PRESSED, "", key);
          if (key.isLetterKey()) {
            fire(KeyEvent.KEY_TYPED, key.getChar().toLowerCase(Locale.ROOT), key);
          } else if (key == KeyCode.ENTER) {
            fire(KeyEvent.KEY_TYPED, "\r", KeyCode.UNDEFINED);
          }
          fire(KeyEvent.KEY_RELEASED, "", key);
          return null;
        });
  }

  private static void stroke(char each) {
    KeyCode key =
        each == '\r' ? KeyCode.ENTER : KeyCode.getKeyCode(("" + each).toUpperCase(Locale.ROOT));
    fire(KeyEvent.KEY_PRESSED, "", key == null ? KeyCode.PERIOD : key);
    fire(KeyEvent.KEY_TYPED, "" + each, KeyCode.UNDEFINED);
    fire(KeyEvent.KEY_RELEASED, "", key == null ? KeyCode.PERIOD : key);
  }

  private static void fire(EventType<KeyEvent> type, String character, KeyCode key) {
    Node owner = scene().getFocusOwner();
    EventTarget target = owner == null ? scene() : owner;
    Event.fireEvent(target, new KeyEvent(type, character, "", key, false, false, false, false));
  }

  /** Tabs are held back as well, until it is known who typed them; so the focus is put there. */
  private static void reach(String id) throws Exception {
    until(() -> scene().lookup("#" + id) != null && scene().lookup("#" + id).isFocusTraversable());
    onScreen(
        () -> {
          scene().lookup("#" + id).requestFocus();
          return null;
        });
  }

  private static String words(String id) {
    return onScreen(() -> scene().lookup("#" + id) instanceof Labeled label ? label.getText() : "");
  }

  private static Scene scene() {
    return Window.getWindows().get(0).getScene();
  }

  private static <T> T onScreen(Callable<T> what) {
    return WaitForAsyncUtils.waitForAsyncFx(5_000, what);
  }

  private static void until(Callable<Boolean> happened) throws Exception {
    WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, happened);
  }
}
