package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Rock the gauge through square: the samples from entering the bore to leaving it are one reading.
 *
 * <p>Leaving is noticed by any of these:
 *
 * <ul>
 *   <li>a level more than {@code leaves_above_mm} above the reading's lowest;
 *   <li>a level outside the plausible window, where there is one, and higher than the widest
 *       rocking reaches from the reading's lowest;
 *   <li>silence longer than {@code leaves_after_s}, by the samples' times;
 *   <li>free air: a {@linkplain Plateau steady plateau} above everything in the reading, where the
 *       gauge rests on its stop;
 *   <li>the end of the stream.
 * </ul>
 *
 * <p>Levels are medians of three samples, so that a single wild sample neither ends nor begins a
 * reading. What lies between readings (free air, moving in and out) gives no event. A reading whose
 * samples do not suffice gives the reason. So does a stream without any reading at all, and one of
 * {@value #MOST_SAMPLES} samples without leaving.
 */
final class RockRule implements PickRule {
  static final int MOST_SAMPLES = 20_000;

  // 150 mm tilted by 8 degrees: 150 mm / cos 8 degrees - 150 mm is 1.47 mm.
  private static final double WIDEST_ROCK_MM = 1.6;

  private final PickSpec.Rock spec;
  private final PlausibleWindow window;
  private final RockPick pick;
  private final Plateau plateau;
  private final FreeAir air;
  private final MedianOfThree levels = new MedianOfThree();
  private RockRun run;
  private Sample last;
  private boolean anyEvent;

  /**
   * @param window null when not known
   */
  RockRule(PickSpec.Rock spec, PlausibleWindow window, RockPick pick, double resolutionMm) {
    this.spec = spec;
    this.window = window;
    this.pick = pick;
    plateau = new Plateau(resolutionMm);
    air = new FreeAir(spec.leavesAboveMm(), plateau);
    run = RockRun.afterSilence();
  }

  @Override
  public List<PickEvent> accept(Sample sample) {
    List<PickEvent> events = new ArrayList<>(quiet(sample.tS()));
    last = sample;
    levels.accept(sample).forEach(leveled -> take(leveled, events));
    return events;
  }

  @Override
  public List<PickEvent> quiet(double tS) {
    List<PickEvent> events = new ArrayList<>();
    if (last != null && tS - last.tS() > spec.leavesAfterS()) {
      finish(events);
    }
    return events;
  }

  @Override
  public List<PickEvent> end(double tS) {
    List<PickEvent> events = new ArrayList<>();
    finish(events);
    if (!anyEvent && last != null) {
      String why = "the gauge was never seen rocking in a bore";
      report(new PickEvent.NotPicked(last.tS(), List.of(last), why), events);
    }
    return events;
  }

  private void finish(List<PickEvent> events) {
    levels.flush().forEach(leveled -> take(leveled, events));
    leave(events, false);
    run = RockRun.afterSilence();
  }

  private void take(Leveled next, List<PickEvent> events) {
    if (isOutsideWindow(next.levelMm())) {
      leave(events, true);
      run = RockRun.afterAir(null);
      return;
    }
    if (!run.isEmpty() && next.levelMm() > run.floorMm() + spec.leavesAboveMm()) {
      double floorMm = run.floorMm();
      leave(events, true);
      run = RockRun.afterAir(floorMm);
    }
    run.add(next, spec.leavesAboveMm());
    lookForPlateau(events);
    lookAboveWindow(events);
    if (run.size() == MOST_SAMPLES) {
      String why = "more than " + MOST_SAMPLES + " samples without leaving the bore";
      report(new PickEvent.NotPicked(next.sample().tS(), run.samples(), why), events);
      run = RockRun.afterAir(null);
    }
  }

  /** The window is for readings: while it is rocked, a gauge may read beyond its upper limit. */
  private boolean isOutsideWindow(double levelMm) {
    if (window == null || window.contains(levelMm)) {
      return false;
    }
    return levelMm < window.leastMm() || run.isEmpty() || levelMm > run.floorMm() + WIDEST_ROCK_MM;
  }

  private void lookForPlateau(List<PickEvent> events) {
    int start = plateau.start(run.content(), run.floorMm());
    if (start == 0) {
      run.isPlateauSoFar(plateau);
    } else if (start > 0 && plateau.isFreeAir(run.content(), start, run.floorMm())) {
      RockRun free = run.splitAt(start);
      leave(events, true);
      air.stopAt(free.floorMm());
      run = free;
    }
  }

  private void lookAboveWindow(List<PickEvent> events) {
    int start = window == null ? -1 : plateau.startOfAirAbove(run.content(), window.mostMm());
    if (start >= 0) {
      run.splitAt(start);
      leave(events, true);
      run = RockRun.afterAir(null);
    }
  }

  private void leave(List<PickEvent> events, boolean intoAir) {
    air.checkStop(run);
    if (run.isEmpty() || air.holds(run)) {
      return;
    }
    PickEvent event = pick.of(run.reading());
    boolean fragment = (intoAir || run.cameFromAir()) && run.isFragment();
    boolean passing = fragment || air.isMostOf(run);
    if (event instanceof PickEvent.Picked || !passing) {
      report(event, events);
    }
    if (event instanceof PickEvent.Picked) {
      air.pickedAt(run.floorMm());
    }
  }

  private void report(PickEvent event, List<PickEvent> events) {
    events.add(event);
    anyEvent = true;
  }
}
