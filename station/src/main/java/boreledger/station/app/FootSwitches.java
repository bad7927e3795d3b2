package boreledger.station.app;

import boreledger.drivers.footswitch.FootSwitch;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.station.gauging.Wish;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;

/**
 * The foot switches of a gauging, one line for each port. They are opened before anything is
 * gauged, and nobody hears them before {@link #start}; whoever opened them closes them.
 */
public final class FootSwitches implements AutoCloseable {
  private static final String OPTION = "--switch";

  private final Map<Line, Map<String, Pedal.Action>> lines = new LinkedHashMap<>();

  private FootSwitches() {}

  /** No switch at all. */
  public static FootSwitches none() {
    return new FootSwitches();
  }

  /**
   * Opens the ports of some pedals: serial ones at 9600 baud, 8 data bits, no parity. A port that
   * goes away is waited for.
   *
   * @param gauges the ports of the gauges, which no switch can share
   * @throws UsageProblem if two pedals cannot be told apart, or a port is a gauge's
   */
  public static FootSwitches open(List<Pedal> pedals, Set<String> gauges)
      throws UsageProblem, LineFault {
    Map<String, Map<String, Pedal.Action>> ports = ports(pedals, gauges);
    DoubleSupplier clockS = LineClock.fromNow();
    FootSwitches switches = new FootSwitches();
    boolean ready = false;
    try {
      for (Map.Entry<String, Map<String, Pedal.Action>> each : ports.entrySet()) {
        Line line = PortSource.switchLine(each.getKey(), OPTION, clockS);
        switches.lines.put(line, each.getValue());
      }
      ready = true;
    } finally {
      if (!ready) {
        switches.close();
      }
    }
    return switches;
  }

  /**
   * Begins to listen.
   *
   * @param wishes takes what is asked for, on a thread of the switch
   * @param notices takes what a person should know of a switch, in one line, on the same thread
   */
  public void start(Consumer<Wish> wishes, Consumer<String> notices) {
    lines.forEach(
        (line, actions) -> {
          Consumer<String> pressed = text -> pressed(line, actions, text, wishes, notices);
          new FootSwitch(line, pressed, notices).start();
        });
  }

  @Override
  public void close() {
    lines.keySet().forEach(Line::close);
  }

  private static void pressed(
      Line line,
      Map<String, Pedal.Action> actions,
      String text,
      Consumer<Wish> wishes,
      Consumer<String> notices) {
    Pedal.Action action = actions.getOrDefault(text.strip(), actions.get(null));
    if (action == null) {
      notices.accept(
          "foot switch: " + line.name() + " sent \"" + text.strip() + "\", which is no pedal's");
    } else {
      wishes.accept(action.wish());
    }
  }

  private static Map<String, Map<String, Pedal.Action>> ports(
      List<Pedal> pedals, Set<String> gauges) throws UsageProblem {
    Map<String, Map<String, Pedal.Action>> ports = new LinkedHashMap<>();
    for (Pedal pedal : pedals) {
      if (gauges.contains(pedal.port())) {
        throw new UsageProblem(
            OPTION + ": a gauge and a switch cannot share the port " + pedal.port());
      }
      Map<String, Pedal.Action> actions =
          ports.computeIfAbsent(pedal.port(), port -> new HashMap<>());
      if (actions.put(pedal.text(), pedal.action()) != null) {
        String which = pedal.text() == null ? "" : " sending " + pedal.text();
        throw new UsageProblem(OPTION + ": two actions for " + pedal.port() + which);
      }
    }
    return ports;
  }
}
