package boreledger.drivers.footswitch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class FootSwitchTest {
  private final List<String> heard = new ArrayList<>();
  private final Script line = new Script();

  @Test
  void aSwitchThatGoesAndComesBackIsHeardAgainAndHalfALineIsNoPress() throws Exception {
    line.events.add(chunk("A\rhal"));
    line.events.add(new LineEvent.Gone(1, "its port has gone"));
    line.events.add(new LineEvent.Back(2, "its port is back"));
    line.events.add(chunk("B\r"));

    listen();

    assertEquals(
        List.of(
            "press A",
            "told foot switch: its port has gone",
            "told foot switch: its port is back",
            "press B"),
        heard);
    assertTrue(line.closed);
  }

  @Test
  void aSwitchWhoseLineBreaksIsToldOf() throws Exception {
    line.fault = new LineFault("its port broke");

    listen();

    assertEquals(List.of("told foot switch: its port broke"), heard);
    assertTrue(line.closed);
  }

  private void listen() throws InterruptedException {
    new FootSwitch(line, text -> heard.add("press " + text), text -> heard.add("told " + text))
        .start()
        .join();
  }

  private static LineEvent chunk(String text) {
    return new LineEvent.Chunk(0, Bytes.of(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** A line that says what is in it, and then breaks or ends. */
  private static final class Script implements Line {
    private final Queue<LineEvent> events = new ArrayDeque<>();
    private LineFault fault;
    private boolean closed;

    @Override
    public String name() {
      return "scripted switch";
    }

    @Override
    public LineEvent read(Duration timeout) throws LineFault {
      if (events.isEmpty() && fault != null) {
        throw fault;
      }
      return events.isEmpty() ? new LineEvent.End(9) : events.remove();
    }

    @Override
    public void send(Bytes request) throws LineFault {
      throw new LineFault("nobody asks a switch");
    }

    @Override
    public void close() {
      closed = true;
    }
  }
}
