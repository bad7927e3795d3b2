package boreledger.station.audit;

import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import java.util.List;
import java.util.Optional;

/** Whether the readings of a session were taken where its plan asked for them. */
final class PlanWatch {
  private final List<Position> plan;
  private final int[] readings;
  private boolean mayCheckAgain;
  private boolean reopened;
  private boolean chosen;

  PlanWatch(List<Position> plan) {
    this.plan = plan;
    this.readings = new int[plan.size()];
  }

  /** The session goes on after a pause: a check on the setting ring may come first. */
  void resumed() {
    mayCheckAgain = plan.contains(SettingCheck.OPENING);
    chosen = false;
  }

  /** A person chose the next position: what still waits may come in any order until a pause. */
  void chosen() {
    chosen = true;
  }

  /** What is wrong with a reading at a position now; empty when it was its turn. */
  Optional<String> read(Position position) {
    if (position.equals(SettingCheck.RESUMING)) {
      boolean due = mayCheckAgain;
      mayCheckAgain = false;
      return due
          ? Optional.empty()
          : Optional.of("a check on the setting ring that no pause asked for");
    }
    int at = plan.indexOf(position);
    if (at < 0) {
      return Optional.of("taken at " + position.words() + ", which is not in the session's plan");
    }
    int turn = turn();
    // A hole in a session that was done is filled, and the closing check is asked for once more.
    boolean closedAgain = reopened && position.equals(SettingCheck.CLOSING) && turn == plan.size();
    boolean asChosen = chosen && readings[at] == 0 && !(position instanceof SettingCheck);
    readings[at]++;
    if (at == turn || closedAgain || asChosen) {
      return Optional.empty();
    }
    String due = turn == plan.size() ? "nothing" : plan.get(turn).words();
    return Optional.of("taken at " + position.words() + ", where the plan asks for " + due);
  }

  /** A reading no longer stands at a position. */
  void takenBack(Position position) {
    reopened |= isDone();
    add(position, -1);
  }

  /** A reading stands at a position again, or was moved there; false when it is no place of it. */
  boolean stands(Position position) {
    return add(position, 1);
  }

  /** Whether every position has its reading. */
  boolean isDone() {
    return turn() == plan.size();
  }

  private boolean add(Position position, int number) {
    int at = plan.indexOf(position);
    if (at >= 0) {
      readings[at] += number;
    }
    return at >= 0 || position.equals(SettingCheck.RESUMING);
  }

  private int turn() {
    int turn = 0;
    while (turn < readings.length && readings[turn] > 0) {
      turn++;
    }
    return turn;
  }
}
