package boreledger.drivers.footswitch;

import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.function.Consumer;

/**
 * One or several pedals on a line of their own, read on a thread of their own. A press is a line of
 * text ended by CR, LF or CRLF; debouncing is the switch's own affair. A pedal that has gone is
 * waited for when its line is one that is; what it had not sent whole is no press.
 *
 * <p>It owns its line, and its thread ends soon after it is closed.
 */
public final class FootSwitch implements AutoCloseable {
  private static final Duration READ_TIMEOUT = Duration.ofMillis(200);

  private final Line line;
  private final Consumer<String> pressed;
  private final Consumer<String> told;
  private final Presses presses = new Presses();

  /**
   * A switch that nobody listens to yet.
   *
   * @param pressed told the text of each press, without its ending, on the switch's thread
   * @param told told in one line that the switch has gone, is back or is of no more use, on the
   *     same thread
   */
  public FootSwitch(Line line, Consumer<String> pressed, Consumer<String> told) {
    this.line = line;
    this.pressed = pressed;
    this.told = told;
  }

  /** Begins to listen, on a daemon thread. */
  public Thread start() {
    Thread thread = new Thread(this::listen, "foot switch on " + line.name());
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  @Override
  public void close() {
    line.close();
  }

  private void listen() {
    try (line) {
      LineEvent event = line.read(READ_TIMEOUT);
      while (!event.isLast()) {
        hear(event);
        event = line.read(READ_TIMEOUT);
      }
    } catch (LineFault fault) {
      told.accept("foot switch: " + fault.getMessage());
    }
  }

  private void hear(LineEvent event) {
    if (event instanceof LineEvent.Chunk chunk) {
      presses.feed(chunk.bytes()).forEach(pressed);
    } else if (event instanceof LineEvent.Gone gone) {
      presses.cut();
      told.accept("foot switch: " + gone.why());
    } else if (event instanceof LineEvent.Back back) {
      told.accept("foot switch: " + back.how());
    }
  }
}
