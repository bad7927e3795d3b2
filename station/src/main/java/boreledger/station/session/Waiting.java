package boreledger.station.session;

import boreledger.station.plan.Position;
import boreledger.station.session.StoredSession.StoredReading;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The positions of a session that still wait for a reading, in order. */
final class Waiting {
  private final Deque<Position> positions;
  private int done;

  private Waiting(List<Position> positions, int done) {
    this.positions = new ArrayDeque<>(positions);
    this.done = done;
  }

  static Waiting forAll(List<Position> plan) {
    return new Waiting(plan, 0);
  }

  /** What a session still lacks. One that was done once and has holes closes once more. */
  static Waiting forRest(List<Position> plan, StoredSession stored) {
    Set<Position> taken =
        stored.readings().stream().map(StoredReading::position).collect(Collectors.toSet());
    if (stored.reopened()) {
      taken.remove(Position.SettingCheck.CLOSING);
    }
    List<Position> rest = plan.stream().filter(position -> !taken.contains(position)).toList();
    return new Waiting(rest, plan.size() - rest.size());
  }

  Optional<Position> next() {
    return Optional.ofNullable(positions.peekFirst());
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

  void first(Position position) {
    positions.addFirst(position);
  }

  /** The position that was done last is to be done again. */
  void takenBack(Position position) {
    positions.addFirst(position);
    done--;
  }

  void taken(Position position) {
    positions.removeFirstOccurrence(position);
    done++;
  }
}
