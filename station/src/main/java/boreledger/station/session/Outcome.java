package boreledger.station.session;

import boreledger.drivers.pick.PickEvent;
import boreledger.station.plan.Position;
import java.util.List;

/** What became of something that the gauge said, or that a person asked for. */
public sealed interface Outcome {
  /**
   * A reading was taken: it is durable in the ledger.
   *
   * @param entry the number of its entry
   * @param valueMm the gauge's own value in millimetres
   * @param next the next position; null when the plan is done
   */
  record Taken(long entry, Position position, double valueMm, List<String> cautions, Position next)
      implements Outcome {
    /** Takes a copy of the list. */
    public Taken {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * Something became no reading; it is durable in the ledger as a refused sample.
   *
   * @param position the position that was waiting and still is; null when the plan was done
   * @param why in one plain clause
   */
  record Refused(double tS, Position position, String why) implements Outcome {}

  /**
   * A value that no bore near the nominal can have: recorded as a refused sample, and taken only if
   * a person confirms it.
   *
   * @param why in one plain clause
   */
  record Held(Position position, PickEvent.Picked picked, String why) implements Outcome {}

  /**
   * The last reading was taken back; the ledger has it already.
   *
   * @param entry the reading's entry
   * @param position where it was taken, which waits again
   * @param valueMm the reading that does not count any more
   */
  record TakenBack(long entry, Position position, double valueMm) implements Outcome {}

  /**
   * The reading that was just taken back counts again; the ledger has it already.
   *
   * @param entry the reading's entry
   * @param position where it was taken
   * @param valueMm the reading
   * @param next the next position; null when the plan is done
   */
  record Restored(long entry, Position position, double valueMm, Position next)
      implements Outcome {}

  /**
   * The position that was next waits until the end of the plan, or keeps the reading it has; the
   * ledger has it already.
   *
   * @param next the next position now
   */
  record Skipped(Position position, Position next) implements Outcome {}

  /**
   * A person chose the next position; the ledger has it already.
   *
   * @param again whether a reading stands there, which the new one will take back
   */
  record GoingTo(Position position, boolean again) implements Outcome {}

  /** A held value was left: it stays a refused sample, and its position still waits. */
  record Left(Held held) implements Outcome {}

  /** The gauge was asked for a reading; what it answers comes like anything else it says. */
  record Asked() implements Outcome {}

  /**
   * What a person asked for could not be done. Nothing changed, and the ledger does not have it.
   *
   * @param why in one plain clause
   */
  record NotDone(String why) implements Outcome {}
}
