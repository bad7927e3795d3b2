package boreledger.station.session;

import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession.StoredReading;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The positions of a session that still wait for a reading, in order. */
final class Waiting {
  static final String PLAN_DONE = "every position of the plan has its reading";

  private final List<Position> plan;
  private final Deque<Position> positions;
  private int done;
  private Position again;

  private Waiting(List<Position> plan, List<Position> positions, int done) {
    this.plan = plan;
    this.positions = new ArrayDeque<>(positions);
    this.done = done;
  }

  static Waiting forAll(List<Position> plan) {
    return new Waiting(plan, plan, 0);
  }

  /** What a session still lacks. One that was done once and has holes closes once more. */
  static Waiting forRest(List<Position> plan, StoredSession stored) {
    Set<Position> taken =
        stored.readings().stream().map(StoredReading::position).collect(Collectors.toSet());
    if (stored.reopened()) {
      taken.remove(SettingCheck.CLOSING);
    }
    List<Position> rest = plan.stream().filter(position -> !taken.contains(position)).toList();
    return new Waiting(plan, rest, plan.size() - rest.size());
  }

  Optional<Position> next() {
    return Optional.ofNullable(again == null ? positions.peekFirst() : again);
  }

  /** The position that comes next when the present one is skipped; empty when there is none. */
  Optional<Position> afterNext() {
    if (again != null) {
      return Optional.ofNullable(positions.peekFirst());
    }
    return positions.stream().skip(1).filter(each -> !isClosing(each)).findFirst();
  }

  /** Why the present position cannot be skipped; empty when it can. */
  Optional<String> whyNoSkip() {
    Optional<Position> present = next();
    if (present.isEmpty()) {
      return Optional.of(PLAN_DONE);
    } else if (present.get() instanceof SettingCheck) {
      return Optional.of("a check on the setting ring cannot be skipped");
    }
    return afterNext().isPresent()
        ? Optional.empty()
        : Optional.of("this position is the only one left to gauge");
  }

  /** Why nobody can go to a position now; empty when one can. */
  Optional<String> whyNotTo(Position position) {
    Optional<Position> present = next();
    if (present.isEmpty()) {
      return Optional.of(PLAN_DONE);
    } else if (position instanceof SettingCheck) {
      return Optional.of("the setting ring is gauged when its turn comes");
    } else if (!plan.contains(position)) {
      return Optional.of("that position is not in the plan");
    }
    return present.get() instanceof SettingCheck check && !isClosing(check)
        ? Optional.of("the check on the setting ring comes first")
        : Optional.empty();
  }

  /** Whether a position still waits for its first reading, or for one that was taken back. */
  boolean holds(Position position) {
    return positions.contains(position);
  }

  int done() {
    return done;
  }

  int planned() {
    return done + positions.size();
  }

  boolean isLast(Position position) {
    return positions.size() == 1 && positions.getFirst().equals(position);
  }

  /**
   * Makes a waiting position the next one. Those before it wait until the end, in their order, but
   * before the closing check.
   */
  void turnTo(Position position) {
    again = null;
    Position closing = isClosing(positions.peekLast()) ? positions.removeLast() : null;
    for (int i = positions.size(); i > 0 && !positions.getFirst().equals(position); i--) {
      positions.addLast(positions.removeFirst());
    }
    if (closing != null) {
      positions.addLast(closing);
    }
  }

  /** Makes a position that has its reading the next one; the others wait as they did. */
  void again(Position position) {
    again = position;
  }

  void first(Position position) {
    positions.addFirst(position);
  }

  /** The position that was done last is to be done again. */
  void takenBack(Position position) {
    again = null;
    positions.addFirst(position);
    done--;
  }

  void taken(Position position) {
    again = null;
    if (positions.removeFirstOccurrence(position)) {
      done++;
    }
  }

  private static boolean isClosing(Position position) {
    return SettingCheck.CLOSING.equals(position);
  }
}
