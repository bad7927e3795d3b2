package boreledger.station.bench.model;

import boreledger.station.session.Outcome;

/**
 * Takes a person's answer to a held value. Both methods are called on the screen's thread and must
 * return at once.
 */
public interface HeldAnswers {
  /** Take it anyway; what comes of it is told by an event. */
  void confirm(Outcome.Held held);

  /** Leave it; the position still waits. */
  void leave(Outcome.Held held);
}
