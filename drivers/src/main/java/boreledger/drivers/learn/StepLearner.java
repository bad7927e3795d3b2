package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.LineSettings;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Learns a gauge press by press: after each it says what is known, what to show next, and at which
 * setting the port is to be listened to.
 *
 * <ul>
 *   <li>The usual setting is given up when four values brought no bytes that can be read. The
 *       others are then given one press each; those whose bytes could be a gauge's come again when
 *       all were tried.
 *   <li>Bytes that settle the setting, such as text, are stayed with. Seven data bits with parity
 *       are told from what is heard with eight.
 *   <li>Where a setting is given up, its presses are forgotten: they were noise.
 *   <li>One value alone tells nothing yet.
 * </ul>
 *
 * <p>It opens no port and keeps no thread; one thread uses it.
 */
public final class StepLearner {
  private static final int ENOUGH_VALUES = 4;
  private static final NextValue FIRST = new NextValue(new BigDecimal("0.000"), "zero", null);

  private final List<LineSettings> settings;
  private final Deque<Turn> turns = new ArrayDeque<>();
  private final List<Press> presses = new ArrayList<>();
  private Turn now;
  private int count;
  private Learned learned;

  /** A setting's turn, for one press or for as many values as it takes. */
  private record Turn(LineSettings setting, boolean allValues) {}

  private record Press(List<LineEvent.Chunk> chunks, ShownValue shown) {
    Bytes bytes() {
      return chunks.stream().map(LineEvent.Chunk::bytes).reduce(Bytes.EMPTY, Bytes::plus);
    }
  }

  /** A learner at a serial port of which not even the setting is known. */
  public StepLearner() {
    this(PortLearner.settings());
  }

  /**
   * A learner where only some settings are possible.
   *
   * @param settings with eight data bits, the likeliest first; not empty
   */
  public StepLearner(List<LineSettings> settings) {
    this.settings = List.copyOf(settings);
    giveUp();
  }

  /** The setting to listen at. */
  public LineSettings setting() {
    return now.setting();
  }

  /** How many settings were begun with: another number means that another setting has its turn. */
  public int turn() {
    return count;
  }

  /** What was shown at this setting, in order. */
  public List<ShownValue> shown() {
    return presses.stream().map(Press::shown).toList();
  }

  /** What is known now. */
  public Learned learned() {
    return learned;
  }

  /**
   * Learns from one more press.
   *
   * @param chunks what came; not empty
   * @param value what the gauge showed
   */
  public void pressed(List<LineEvent.Chunk> chunks, ShownValue value) {
    presses.add(new Press(List.copyOf(chunks), value));
    Optional<LineSettings> settled = settled();
    if (settled.isEmpty() && !now.allValues()) {
      turns.addLast(new Turn(now.setting(), true));
      giveUp();
      return;
    }
    learned = learn();
    boolean isHopeless = settled.isEmpty() && learned.candidates().isEmpty();
    if (isHopeless && presses.size() >= ENOUGH_VALUES) {
      giveUp();
    }
  }

  /** Forgets the last press, as if it had never been; does nothing when there was none. */
  public void takeBack() {
    if (!presses.isEmpty()) {
      presses.remove(presses.size() - 1);
      learned = learn();
    }
  }

  /** Goes on to the next setting; the first comes after the last. */
  public void giveUp() {
    if (turns.isEmpty()) {
      settings.forEach(setting -> turns.add(new Turn(setting, turns.isEmpty())));
    }
    now = turns.removeFirst();
    count++;
    presses.clear();
    learned = learn();
  }

  private Learned learn() {
    if (presses.isEmpty()) {
      return new Learned(false, List.of(), "nothing was heard yet", FIRST, Set.of());
    }
    if (presses.size() == 1) {
      NextValue next = new Verdict(List.of(), shown()).next();
      String why = "one value alone tells nothing yet";
      return new Learned(false, List.of(), why, next, Set.of(Open.SIZES));
    }
    LineSettings meant = settled().orElse(now.setting());
    List<LineEvent.Chunk> heard =
        presses.stream().flatMap(press -> press.chunks().stream()).toList();
    return GaugeLearner.learn(
        Presses.withBits(heard, meant.dataBits()), shown(), Optional.of(meant));
  }

  /** The setting that the first press calls for; empty when it may be noise. */
  private Optional<LineSettings> settled() {
    return Hearing.of(presses.get(0).bytes()).settings(now.setting());
  }
}
