package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Hold still: samples that stay within a small spread for a while are one reading, their mean.
 *
 * <ul>
 *   <li>The next reading needs the value to move away first, for two samples in a row, so that one
 *       wild sample does not repeat a reading.
 *   <li>A silence is no move: the gauge may have slept where it is. When it is still at the last
 *       reading after 2 s or twice the still time, whichever is longer, without a sample, that is
 *       told once as no reading.
 *   <li>Samples further apart than the still time are not known to have been still in between.
 *   <li>Values outside the plausible window are free air.
 *   <li>A stream in which nothing ever settled ends with the reason.
 * </ul>
 */
final class SettleRule implements PickRule {
  private static final int FEWEST = 3;
  private static final double SILENCE_S = 2;
  // So that decimal parameters hold for differences of doubles: 0.012 - 0.009 is above 0.003.
  private static final double ROUNDING = 1e-9;

  private final PickSpec.Settle spec;
  private final PlausibleWindow window;
  private final Deque<Sample> still = new ArrayDeque<>();
  private Sample last;
  private Double pickedMm;
  private int away;
  private boolean everPicked;
  private boolean woken;

  /**
   * @param window null when not known
   */
  SettleRule(PickSpec.Settle spec, PlausibleWindow window) {
    this.spec = spec;
    this.window = window;
  }

  @Override
  public List<PickEvent> accept(Sample sample) {
    forgetAfterSilence(sample);
    last = sample;
    if (window != null && !window.contains(sample.valueMm())) {
      still.clear();
      moved(sample);
      return List.of();
    }
    if (pickedMm != null && !moved(sample)) {
      return woken && isSettledWith(sample) ? List.of(unmoved()) : List.of();
    }
    return isSettledWith(sample) ? List.of(settled()) : List.of();
  }

  @Override
  public List<PickEvent> end(double tS) {
    if (everPicked || last == null) {
      return List.of();
    }
    List<Sample> samples = still.isEmpty() ? List.of(last) : List.copyOf(still);
    String why = "never still within " + spec.withinMm() + " mm for " + spec.forS() + " s";
    PickEvent none = new PickEvent.NotPicked(last.tS(), samples, why);
    last = null;
    return List.of(none);
  }

  private void forgetAfterSilence(Sample next) {
    double silentS = last == null ? 0 : next.tS() - last.tS();
    if (silentS > spec.forS()) {
      still.clear();
    }
    if (silentS > Math.max(SILENCE_S, 2 * spec.forS())) {
      woken = pickedMm != null;
    }
  }

  /** Notes whether the value has left the last reading's; true once it has. */
  private boolean moved(Sample sample) {
    if (pickedMm == null) {
      return true;
    }
    double moveMm = Math.abs(sample.valueMm() - pickedMm);
    away = moveMm >= spec.moveMm() - ROUNDING ? away + 1 : 0;
    if (away < 2) {
      return false;
    }
    pickedMm = null;
    woken = false;
    still.clear();
    return true;
  }

  private double spreadMm() {
    double leastMm = still.stream().mapToDouble(Sample::valueMm).min().orElseThrow();
    double mostMm = still.stream().mapToDouble(Sample::valueMm).max().orElseThrow();
    return mostMm - leastMm;
  }

  private boolean isSettledWith(Sample sample) {
    still.add(sample);
    while (spreadMm() > spec.withinMm() + ROUNDING) {
      still.removeFirst();
    }
    double stillS = still.getLast().tS() - still.getFirst().tS();
    return still.size() >= FEWEST && stillS >= spec.forS() - ROUNDING;
  }

  private PickEvent unmoved() {
    PickEvent none =
        new PickEvent.NotPicked(
            still.getLast().tS(),
            List.copyOf(still),
            "after a silence, still where the last reading was; move the gauge away and back for"
                + " a new one");
    still.clear();
    woken = false;
    return none;
  }

  private PickEvent settled() {
    PickEvent.Picked picked = pick(List.copyOf(still));
    still.clear();
    pickedMm = picked.valueMm();
    away = 0;
    everPicked = true;
    return picked;
  }

  /** The mean of the samples, with its standard uncertainty from their scatter (GUM, 4.2.3). */
  static PickEvent.Picked pick(List<Sample> samples) {
    int count = samples.size();
    double meanMm = samples.stream().mapToDouble(Sample::valueMm).average().orElseThrow();
    double squares = samples.stream().mapToDouble(s -> Math.pow(s.valueMm() - meanMm, 2)).sum();
    Double uncertaintyMm = count < 2 ? null : Math.sqrt(squares / (count - 1) / count);
    double middleS = (samples.get(0).tS() + samples.get(count - 1).tS()) / 2;
    return new PickEvent.Picked(middleS, meanMm, uncertaintyMm, samples, List.of());
  }
}
