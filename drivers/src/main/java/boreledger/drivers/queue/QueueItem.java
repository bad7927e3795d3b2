package boreledger.drivers.queue;

import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.LineFault;

/** What travels through the capture queue; every item says which gauge it is from. */
public sealed interface QueueItem {
  /** The name under which the session knows the gauge. */
  String gauge();

  /** Whether it may be left out when the queue is full. */
  default boolean maySkip() {
    return false;
  }

  /** Something that a gauge said. */
  record Said(String gauge, GaugeEvent event) implements QueueItem {
    @Override
    public boolean maySkip() {
      return event instanceof GaugeEvent.Live;
    }
  }

  /**
   * A gauge's line went away and is waited for; what was unfinished is in the queue before this.
   *
   * @param tS when, in seconds on the line's clock
   */
  record Gone(String gauge, double tS, String why) implements QueueItem {}

  /**
   * A gauge's line that had gone is there again.
   *
   * @param tS when, in seconds on the line's clock
   */
  record Back(String gauge, double tS, String how) implements QueueItem {}

  /**
   * A gauge's line has no more to give.
   *
   * @param tS when, in seconds on the line's clock
   */
  record Ended(String gauge, double tS) implements QueueItem {}

  /** A gauge's line broke; everything it gave before is in the queue before this. */
  record Broke(String gauge, double tS, LineFault fault) implements QueueItem {}
}
