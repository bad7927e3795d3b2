package boreledger.station.bench;

import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * A measurement, no test: prints the milliseconds from the Java machine's start to the window's
 * second frame, and ends. Arguments: {@code station} or {@code empty}, and a folder.
 */
public final class FirstWindow {
  private FirstWindow() {}

  /** An empty window. */
  public static final class Empty extends Application {
    /** Called by JavaFX. */
    public Empty() {}

    @Override
    public void start(Stage stage) {
      new Frames().start();
      stage.setScene(new Scene(new Label("empty"), 1280, 800));
      stage.show();
    }
  }

  /** Opens one of the windows. */
  public static void main(String[] arguments) {
    if (arguments[0].equals("empty")) {
      Application.launch(Empty.class);
    } else {
      Workshop workshop = new Workshop(Path.of(arguments[1]).resolve("bench.db"));
      BenchApplication.show(
          new BenchWiring(
              workshop, null, 1, new TypedValues(), event -> {}, desk -> new Frames().start()));
    }
  }

  private static final class Frames extends AnimationTimer {
    private int seen;

    @Override
    public void handle(long nowNs) {
      if (!Window.getWindows().isEmpty() && ++seen == 2) {
        Instant started = ProcessHandle.current().info().startInstant().orElseThrow();
        long tookMs = Duration.between(started, Instant.now()).toMillis();
        System.out.println("first window ms " + tookMs);
        stop();
        List.copyOf(Window.getWindows()).forEach(Window::hide);
      }
    }
  }
}
