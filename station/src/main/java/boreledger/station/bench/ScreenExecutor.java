package boreledger.station.bench;

import java.util.concurrent.Executor;
import javafx.application.Platform;

/** The one way from other threads onto the screen's. */
final class ScreenExecutor implements Executor {
  @Override
  public void execute(Runnable command) {
    Platform.runLater(command);
  }
}
