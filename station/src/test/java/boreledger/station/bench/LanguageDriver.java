package boreledger.station.bench;

import boreledger.station.app.Replay;
import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;

/**
 * A program of its own that opens the window on a gauged ledger, presses G when it is told to, and
 * prints every word of every room. Arguments: a folder, then {@code G} or nothing.
 */
public final class LanguageDriver {
  private static final int ROOMS = 5;
  private static final int SETTLED = 3;
  private static final int MOST_LOOKS = 150;

  private LanguageDriver() {}

  /** Opens the window. */
  public static void main(String[] arguments) throws Exception {
    Path ledger = Path.of(arguments[0]).resolve("gauged.db");
    if (!Files.exists(ledger)) {
      gauge(ledger);
    }
    boolean pressesG = arguments.length > 1;
    Thread person = new Thread(() -> look(pressesG), "person");
    person.setDaemon(true);
    person.start();
    BenchApplication.show(
        new BenchWiring(new Workshop(ledger), null, 1, new TypedValues(), event -> {}, desk -> {}));
  }

  private static void gauge(Path ledger) throws Exception {
    List<Path> captures = new ArrayList<>();
    for (String name : List.of("bore-rocked", "gap-top")) {
      captures.add(House.SAMPLES.resolve(name + ".capture.jsonl"));
    }
    Replay.prepare(House.SAMPLES.resolve("pumphouse-three.job.toml"), captures, null)
        .into(ledger, event -> {});
  }

  private static void look(boolean pressesG) {
    try {
      while (Boolean.FALSE.equals(onScreen(() -> !Window.getWindows().isEmpty()))) {
        Thread.sleep(100);
      }
      if (pressesG) {
        press(KeyCode.G, false);
      }
      for (int room = 1; room <= ROOMS; room++) {
        press(KeyCode.valueOf("DIGIT" + room), true);
        for (String words : settled()) {
          System.out.println("room " + room + " says " + words.replace("\n", "\\n"));
        }
      }
      onScreen(
          () -> {
            List.copyOf(Window.getWindows()).forEach(Window::hide);
            return null;
          });
    } catch (Exception e) {
      e.printStackTrace(System.out);
      System.exit(1);
    }
  }

  /** The words once results have come and nothing changes any more. */
  private static List<String> settled() throws Exception {
    List<String> before = List.of();
    int same = 0;
    for (int i = 0; i < MOST_LOOKS && same < SETTLED; i++) {
      List<String> now = onScreen(LanguageDriver::words);
      same = now.equals(before) ? same + 1 : 0;
      before = now;
      Thread.sleep(200);
    }
    return before;
  }

  private static List<String> words() {
    List<String> words = new ArrayList<>();
    collect(scene().getRoot(), words);
    return words;
  }

  private static void collect(Node node, List<String> words) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Labeled labeled && labeled.getText() != null) {
      words.add(labeled.getText());
    } else if (node instanceof TextInputControl field && field.getPromptText() != null) {
      words.add(field.getPromptText());
    }
    if (node.getAccessibleText() != null) {
      words.add(node.getAccessibleText());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, words));
    }
  }

  private static void press(KeyCode code, boolean control) throws Exception {
    onScreen(
        () -> {
          KeyEvent event =
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, control, false, false);
          Event.fireEvent(scene(), event);
          return null;
        });
  }

  private static Scene scene() {
    return Window.getWindows().get(0).getScene();
  }

  private static <T> T onScreen(Callable<T> looked) throws Exception {
    FutureTask<T> task = new FutureTask<>(looked);
    for (int i = 0; i < MOST_LOOKS; i++) {
      try {
        Platform.runLater(task);
        return task.get();
      } catch (IllegalStateException notStartedYet) {
        Thread.sleep(100);
      }
    }
    throw new IllegalStateException("the toolkit was not started");
  }
}
