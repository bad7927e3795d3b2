package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.PickSpec;
import java.util.List;

/**
 * Every frame is one reading, however close in time or equal to the last.
 *
 * <p>Equal frames in a row, each less than 0.3 s after the one before, get a caution from the
 * profile's number of them on: nobody presses a key that fast on purpose. They are readings all the
 * same.
 */
final class PressRule implements PickRule {
  private static final double TOO_FAST_S = 0.3;

  private final int stuckAfter;
  private Bytes lastRaw = Bytes.EMPTY;
  private double lastS;
  private int equalInARow;

  PressRule(PickSpec.Press spec) {
    stuckAfter = spec.stuckAfter();
  }

  @Override
  public List<PickEvent> accept(Sample sample) {
    boolean repeats = sample.raw().equals(lastRaw) && sample.tS() - lastS < TOO_FAST_S;
    equalInARow = repeats ? equalInARow + 1 : 1;
    lastRaw = sample.raw();
    lastS = sample.tS();
    return List.of(pick(sample, cautions()));
  }

  @Override
  public List<PickEvent> end(double tS) {
    return List.of();
  }

  static PickEvent pick(Sample sample, List<String> cautions) {
    return new PickEvent.Picked(sample.tS(), sample.valueMm(), null, List.of(sample), cautions);
  }

  private List<String> cautions() {
    return equalInARow < stuckAfter
        ? List.of()
        : List.of(equalInARow + " equal frames in quick succession: the key may be stuck");
  }
}
