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
import boreledger.station.session.SessionStart;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the bench knows of the session it shows.
 *
 * @param plan every position in the order they are gauged
 * @param done the positions that have their reading, as far as they are known
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
    Set<Position> done,
    Map<Position, Double> taken,
    JobResults results,
    String resultsFault,
    DisplayUnit shownUnit) {
  Sitting {
    plan = List.copyOf(plan);
    done = Set.copyOf(done);
    taken = Map.copyOf(taken);
  }

  static Sitting of(Began began, DisplayUnit shownUnit) {
    SessionStart start = began.start();
    List<Position> plan = Plan.of(start.job(), start.measure(), start.ring());
    Set<Position> done = Set.copyOf(plan.subList(0, firstWaiting(plan, began.progress())));
    return new Sitting(
        start, began.resumed(), plan, began.progress(), done, Map.of(), null, "", shownUnit);
  }

  Sitting at(Progress now) {
    return new Sitting(start, resumed, plan, now, done, taken, results, resultsFault, shownUnit);
  }

  Sitting taking(Position position, double valueMm) {
    Map<Position, Double> more = new HashMap<>(taken);
    more.put(position, valueMm);
    Set<Position> moreDone = new HashSet<>(done);
    moreDone.add(position);
    return new Sitting(
        start, resumed, plan, progress, moreDone, more, results, resultsFault, shownUnit);
  }

  Sitting takingBack(Position position) {
    Map<Position, Double> fewer = new HashMap<>(taken);
    fewer.remove(position);
    Set<Position> fewerDone = new HashSet<>(done);
    fewerDone.remove(position);
    return new Sitting(
        start, resumed, plan, progress, fewerDone, fewer, results, resultsFault, shownUnit);
  }

  Sitting with(JobResults computed) {
    return new Sitting(
        start, resumed, plan, progress, doneBy(computed), taken, computed, "", shownUnit);
  }

  Sitting withoutResults(String fault) {
    return new Sitting(start, resumed, plan, progress, done, taken, results, fault, shownUnit);
  }

  Sitting in(DisplayUnit unit) {
    return new Sitting(start, resumed, plan, progress, done, taken, results, resultsFault, unit);
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
    return done.contains(position);
  }

  /** The positions of one cylinder, in order. */
  List<Position> ofCylinder(int cylinder) {
    return plan.stream().filter(each -> isIn(each, cylinder)).toList();
  }

  /** The cylinder being gauged, or the one whose turn is nearest. */
  int shownCylinder() {
    return Stream.concat(next().stream(), plan.stream().filter(each -> !has(each)))
        .map(Sitting::cylinder)
        .flatMapToInt(OptionalInt::stream)
        .findFirst()
        .orElse(job().engine().cylinders());
  }

  /** Where to go in a cylinder: what waits there first, or its first position. */
  Position entry(int cylinder) {
    List<Position> positions = ofCylinder(cylinder);
    return positions.stream().filter(each -> !has(each)).findFirst().orElse(positions.get(0));
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

  /** A session begins or goes on with the first of its plan that waits. */
  private static int firstWaiting(List<Position> plan, Progress progress) {
    if (progress.next() == null) {
      return plan.size();
    }
    // A check after a long pause stands in no plan: then the count tells.
    return progress.next().equals(SettingCheck.RESUMING)
        ? progress.done()
        : plan.indexOf(progress.next());
  }

  /** A sitting before this one may have gone to positions out of turn: the results know them. */
  private Set<Position> doneBy(JobResults computed) {
    if (!resumed || done.size() >= progress.done()) {
      return done;
    }
    Set<Position> more = new HashSet<>(done);
    for (Position each : plan) {
      if (!each.equals(progress.next()) && new Computed(computed).has(each)) {
        more.add(each);
      }
    }
    return more;
  }
}
