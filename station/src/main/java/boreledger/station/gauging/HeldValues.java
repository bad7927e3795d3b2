package boreledger.station.gauging;

import boreledger.station.session.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The held values of a run that wait for an answer, one for each gauge at most. A refused sample
 * leaves it waiting, and so does what could not be done; anything else of its gauge ends it.
 */
final class HeldValues {
  /** The gauge's name that stands for the main one. */
  static final String MAIN = "";

  private final List<Waiting> waiting = new ArrayList<>();

  /**
   * A value that waits.
   *
   * @param gauge the further gauge's name, or {@link #MAIN}
   */
  record Waiting(String gauge, Outcome.Held held) {}

  /** Notes what the run tells. */
  void hear(GaugingEvent event) {
    if (event instanceof GaugingEvent.Beside beside) {
      hear(beside.gauge(), beside.event());
    } else {
      hear(MAIN, event);
    }
  }

  /** The value that an answer is meant for: the last one held when it names none. */
  Optional<Waiting> meant(Outcome.Held held) {
    return waiting.stream()
        .filter(each -> held == null || each.held().equals(held))
        .reduce((earlier, later) -> later);
  }

  private void hear(String gauge, GaugingEvent event) {
    boolean ends =
        event instanceof GaugingEvent.Said said
            && !(said.outcome() instanceof Outcome.Refused)
            && !(said.outcome() instanceof Outcome.Asked)
            && !(said.outcome() instanceof Outcome.NotDone);
    if (ends) {
      waiting.removeIf(each -> each.gauge().equals(gauge));
    }
    if (event instanceof GaugingEvent.Said said && said.outcome() instanceof Outcome.Held held) {
      waiting.add(new Waiting(gauge, held));
    }
  }
}
