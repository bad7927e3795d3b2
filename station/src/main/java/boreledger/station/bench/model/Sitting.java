package boreledger.station.bench.model;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.Reads;
import boreledger.station.bench.words.Lengths;
import boreledger.station.gauging.GaugingEvent.Began;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.Job;
import boreledger.station.plan.Plan;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.session.SessionStart;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the bench knows of the session it shows.
 *
 * @param plan every position in the order they are gauged
 * @param taken the gauge's own values in millimetres of the readings seen in this sitting
 * @param results what the readings mean; null until they were computed
 * @param resultsFault why they could not be computed last time; empty when they could
 * @param shownUnit the unit a person wants to see; null for the job's own
 */
record Sitting(
    SessionStart start,
    boolean resumed,
    List<Position> plan,
    Progress progress,
    Map<Position, Double> taken,
    JobResults results,
    String resultsFault,
    DisplayUnit shownUnit) {
  Sitting {
    plan = List.copyOf(plan);
    taken = Map.copyOf(taken);
  }

  static Sitting of(Began began, DisplayUnit shownUnit) {
    SessionStart start = began.start();
    List<Position> plan = Plan.of(start.job(), start.measure(), start.ring());
    return new Sitting(
        start, began.resumed(), plan, began.progress(), Map.of(), null, "", shownUnit);
  }

  Sitting at(Progress now) {
    return new Sitting(start, resumed, plan, now, taken, results, resultsFault, shownUnit);
  }

  Sitting taking(Position position, double valueMm) {
    Map<Position, Double> more = new HashMap<>(taken);
    more.put(position, valueMm);
    return new Sitting(start, resumed, plan, progress, more, results, resultsFault, shownUnit);
  }

  Sitting takingBack(Position position) {
    Map<Position, Double> fewer = new HashMap<>(taken);
    fewer.remove(position);
    return new Sitting(start, resumed, plan, progress, fewer, results, resultsFault, shownUnit);
  }

  Sitting with(JobResults computed) {
    return new Sitting(start, resumed, plan, progress, taken, computed, "", shownUnit);
  }

  Sitting withoutResults(String fault) {
    return new Sitting(start, resumed, plan, progress, taken, results, fault, shownUnit);
  }

  Sitting in(DisplayUnit unit) {
    return new Sitting(start, resumed, plan, progress, taken, results, resultsFault, unit);
  }

  Job job() {
    return start.job();
  }

  Measure measure() {
    return start.measure();
  }

  Lengths lengths() {
    return new Lengths(shownUnit == null ? job().displayUnit() : shownUnit);
  }

  Optional<Position> next() {
    return Optional.ofNullable(progress.next());
  }

  boolean readsDeviation() {
    return start.gauge().reads() == Reads.DEVIATION;
  }

  /** Where a cylinder is gauged, from the deck down. */
  List<Double> depthsMm() {
    return measure() == Measure.BORE ? job().plan().depthsMm() : start.ring().depthsMm();
  }

  /** Whether a position of the plan has its reading. */
  boolean has(Position position) {
    return taken.containsKey(position) || plan.indexOf(position) < firstWaiting();
  }

  /** The positions of one cylinder, in order. */
  List<Position> ofCylinder(int cylinder) {
    return plan.stream().filter(each -> isIn(each, cylinder)).toList();
  }

  /** The cylinder being gauged, or the one whose turn is nearest. */
  int shownCylinder() {
    return plan.stream()
        .filter(each -> !has(each))
        .map(Sitting::cylinder)
        .flatMapToInt(OptionalInt::stream)
        .findFirst()
        .orElse(job().engine().cylinders());
  }

  Optional<CylinderResults> results(int cylinder) {
    return Optional.ofNullable(results).stream()
        .flatMap(each -> each.cylinders().stream())
        .filter(each -> each.cylinder() == cylinder)
        .findFirst();
  }

  /** The cylinder of a position; empty for the setting ring. */
  static OptionalInt cylinder(Position position) {
    if (position instanceof Position.Bore bore) {
      return OptionalInt.of(bore.cylinder());
    } else if (position instanceof Position.Gap gap) {
      return OptionalInt.of(gap.cylinder());
    } else if (position instanceof Position.RingDepth depth) {
      return OptionalInt.of(depth.cylinder());
    }
    return OptionalInt.empty();
  }

  /** The depth of a position in millimetres; empty for the setting ring. */
  static Optional<Double> depthMm(Position position) {
    if (position instanceof Position.Bore bore) {
      return Optional.of(bore.depthMm());
    } else if (position instanceof Position.Gap gap) {
      return Optional.of(gap.depthMm());
    } else if (position instanceof Position.RingDepth ring) {
      return Optional.of(ring.depthMm());
    }
    return Optional.empty();
  }

  static boolean isIn(Position position, int cylinder) {
    OptionalInt of = cylinder(position);
    return of.isPresent() && of.getAsInt() == cylinder;
  }

  /** Positions are gauged in the plan's order, so those before the next one have their reading. */
  private int firstWaiting() {
    if (progress.next() == null) {
      return plan.size();
    }
    // A check after a long pause stands in no plan: then the count tells.
    return progress.next().equals(SettingCheck.RESUMING)
        ? progress.done()
        : plan.indexOf(progress.next());
  }
}
