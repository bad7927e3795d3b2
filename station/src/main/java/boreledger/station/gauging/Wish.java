package boreledger.station.gauging;

import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;

/**
 * What a person asks of a running session, by hand or by foot, besides gauging. It goes to the run
 * by {@link GaugingRun#wish}; what came of it is told as a {@link GaugingEvent.Said}, at the latest
 * as an {@link Outcome.NotDone} that says why not. It is always about the main gauge, but for a
 * held value, which may be any gauge's.
 */
public sealed interface Wish {
  /** How it was asked. */
  By by();

  /** How something was asked; its words are the reason that the ledger keeps. */
  enum By {
    /** With a key or a button of the bench. */
    BENCH("asked for at the bench"),
    /** With a foot switch on a line of its own. */
    FOOT_SWITCH("foot switch pressed");

    private final String words;

    By(String words) {
      this.words = words;
    }

    /** In one plain clause. */
    public String words() {
      return words;
    }
  }

  /** The gauge is to send a reading now: {@link Outcome.Asked}. */
  record Read(By by) implements Wish {}

  /**
   * The last reading of this sitting is taken back, or counts again when that was done already:
   * {@link Outcome.TakenBack}, {@link Outcome.Restored}.
   */
  record TakeBack(By by) implements Wish {}

  /** The present position is to wait until the end of the plan: {@link Outcome.Skipped}. */
  record Skip(By by) implements Wish {}

  /** This position is to be the next one: {@link Outcome.GoingTo}. */
  record GoTo(Position position, By by) implements Wish {}

  /**
   * A held value is to be taken after all: {@link Outcome.Taken}.
   *
   * @param held as the run told it, of any gauge; null for the one that was held last
   */
  record Confirm(Outcome.Held held, By by) implements Wish {}

  /**
   * A held value is to be left: {@link Outcome.Left}.
   *
   * @param held as the run told it, of any gauge; null for the one that was held last
   */
  record Leave(Outcome.Held held, By by) implements Wish {}
}
