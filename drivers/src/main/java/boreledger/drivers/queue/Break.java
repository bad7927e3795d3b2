package boreledger.drivers.queue;

import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.gauge.GaugeEvent.Picks;
import boreledger.drivers.pick.PickEvent;
import java.util.List;

/**
 * What a gauge was in the middle of when its line went away.
 *
 * <p>It may go on at the same place when the line is back. So nothing that had not ended by itself
 * becomes a reading, or the rest of it would be taken for the next place.
 */
final class Break {
  private static final String WHY = "the line went away before this reading had ended";

  private Break() {}

  /** The events that an end would bring, each reading among them turned into none. */
  static List<GaugeEvent> unfinished(List<GaugeEvent> atAnEnd) {
    return atAnEnd.stream().map(Break::unfinished).toList();
  }

  private static GaugeEvent unfinished(GaugeEvent event) {
    if (event instanceof Picks picks && picks.pick() instanceof PickEvent.Picked picked) {
      return new Picks(new PickEvent.NotPicked(picked.tS(), picked.samples(), WHY));
    }
    return event;
  }
}
