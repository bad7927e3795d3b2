package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.LineSettings.Parity;
import boreledger.drivers.profile.LineSettings.StopBits;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Learns a gauge at a port of which not even the setting is known, while a person sets the gauge to
 * each value and presses its button.
 *
 * <ul>
 *   <li>The usual setting is tried with all values. If no reading of its bytes fits, the others are
 *       each given one press, and those whose bytes could be a gauge's are tried with all values.
 *   <li>Seven data bits with parity need no press of their own: heard as eight, every byte is even,
 *       or every byte is odd.
 *   <li>The gauge has to send when its button is pressed, not all the time.
 * </ul>
 */
public final class PortLearner {
  private static final int[] BAUDS = {9600, 19_200, 4800, 38_400, 115_200, 57_600, 2400, 1200};
  private static final int[] MODBUS_BAUDS = {19_200, 9600};

  private final PortOpener port;
  private final PortPrompt prompt;
  private final List<ShownValue> shown;
  private final Duration patience;
  private Learned learned = Learned.nothing("no gauge's bytes were heard at any setting tried");

  /**
   * A learner.
   *
   * @param shown what the gauge is going to show, in order; not empty
   * @param patience how long a press is waited for before a setting is given up
   */
  public PortLearner(
      PortOpener port, PortPrompt prompt, List<ShownValue> shown, Duration patience) {
    this.port = port;
    this.prompt = prompt;
    this.shown = List.copyOf(shown);
    this.patience = patience;
  }

  /**
   * Tries the settings until one gives bytes that can be read.
   *
   * @throws LineFault if the port cannot be opened or broke
   */
  public Learned learn() throws LineFault {
    List<LineSettings> unclear = new ArrayList<>();
    for (LineSettings setting : settings()) {
      boolean usual = setting.equals(LineSettings.DEFAULT);
      Hearing hearing = listen(setting, usual);
      if (isDone(hearing)) {
        return learned;
      }
      if (hearing == Hearing.BYTES && !usual) {
        unclear.add(setting);
      }
    }
    for (LineSettings setting : unclear) {
      if (isDone(listen(setting, true))) {
        return learned;
      }
    }
    return learned;
  }

  /** Whether the setting is surely right, or its bytes could be read. */
  private boolean isDone(Hearing hearing) {
    boolean settled = hearing != Hearing.NOTHING && hearing != Hearing.BYTES;
    return settled || !learned.candidates().isEmpty();
  }

  /**
   * Listens at one setting, and learns from all values if that is asked for or the first press
   * tells that the setting is right.
   */
  private Hearing listen(LineSettings setting, boolean allValues) throws LineFault {
    Presses presses = new Presses(patience);
    try (Line line = port.open(setting)) {
      prompt.say("Listening at " + words(setting) + ".");
      Hearing hearing = Hearing.of(press(line, presses, shown.get(0)));
      Optional<LineSettings> settled = hearing.settings(setting);
      if (hearing == Hearing.NOTHING) {
        prompt.say("Nothing was heard.");
      } else if (allValues || settled.isPresent()) {
        for (ShownValue value : shown.subList(1, shown.size())) {
          press(line, presses, value);
        }
        LineSettings meant = settled.orElse(setting);
        learned = GaugeLearner.learn(presses.heard(meant.dataBits()), shown, Optional.of(meant));
      }
      return hearing;
    }
  }

  private Bytes press(Line line, Presses presses, ShownValue value) throws LineFault {
    prompt.say(
        "Set the gauge to "
            + value.number().toPlainString()
            + " "
            + value.unit().symbol()
            + " and press its button once.");
    return presses.next(line);
  }

  /** The settings to try, the usual one first. */
  static List<LineSettings> settings() {
    List<LineSettings> settings = new ArrayList<>();
    for (int baud : BAUDS) {
      settings.add(eight(baud, Parity.NONE));
    }
    for (int baud : MODBUS_BAUDS) {
      settings.add(eight(baud, Parity.EVEN));
      settings.add(eight(baud, Parity.ODD));
    }
    return settings;
  }

  private static LineSettings eight(int baud, Parity parity) {
    return new LineSettings(baud, 8, parity, StopBits.ONE, true, true);
  }

  private static String words(LineSettings setting) {
    String parity =
        setting.parity() == Parity.NONE
            ? "no parity"
            : setting.parity() == Parity.EVEN ? "even parity" : "odd parity";
    return setting.baud() + " baud, " + setting.dataBits() + " data bits, " + parity;
  }
}
