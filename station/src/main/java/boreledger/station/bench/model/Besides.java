package boreledger.station.bench.model;

import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.DisplayUnit;
import boreledger.station.session.Outcome;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The further gauges of a run, in the order in which they were heard of. */
final class Besides {
  private final Map<String, BesideLine> lines = new LinkedHashMap<>();
  // The held value of each that waits for an answer, the newest last.
  private final Map<String, Outcome.Held> held = new LinkedHashMap<>();
  private final Ear ear;

  Besides(Ear ear) {
    this.ear = ear;
  }

  /**
   * Takes what one of them says; it sounds like the main gauge.
   *
   * @return whether its readings changed
   */
  boolean heard(GaugingEvent.Beside beside) {
    BesideLine before = lines.getOrDefault(beside.gauge(), BesideLine.of(beside.gauge()));
    lines.put(beside.gauge(), before.after(beside.event()));
    if (beside.event() instanceof GaugingEvent.Said said) {
      hold(beside.gauge(), said.outcome());
      return changed(said.outcome());
    }
    boolean wantsALook =
        beside.event() instanceof GaugingEvent.Noticed
            || beside.event() instanceof GaugingEvent.LineGone;
    if (wantsALook) {
      ear.lookAtMe();
    }
    return false;
  }

  /**
   * How they are now.
   *
   * @param unit what lengths are shown in; null for each job's own
   */
  List<Beside> shown(DisplayUnit unit) {
    return lines.values().stream()
        .map(each -> new Beside(!each.trouble().isEmpty(), each.words(unit)))
        .toList();
  }

  /** Asks about the newest held value that waits; null when none does. */
  Question question(DisplayUnit unit) {
    Question newest = null;
    for (Map.Entry<String, Outcome.Held> each : held.entrySet()) {
      newest = lines.get(each.getKey()).question(each.getValue(), unit);
    }
    return newest;
  }

  /** The newest held value, which is answered now; empty when none waits. */
  Optional<Outcome.Held> answer() {
    Optional<String> newest = held.keySet().stream().reduce((earlier, later) -> later);
    return newest.map(held::remove);
  }

  /** None of them waits for an answer any more. */
  void over() {
    held.clear();
  }

  private void hold(String gauge, Outcome outcome) {
    boolean ends =
        !(outcome instanceof Outcome.Refused)
            && !(outcome instanceof Outcome.Asked)
            && !(outcome instanceof Outcome.NotDone);
    if (ends) {
      held.remove(gauge);
    }
    if (outcome instanceof Outcome.Held waiting) {
      held.put(gauge, waiting);
    }
  }

  private boolean changed(Outcome outcome) {
    if (outcome instanceof Outcome.TakenBack) {
      ear.takenBack();
      return true;
    }
    boolean counts = outcome instanceof Outcome.Taken || outcome instanceof Outcome.Restored;
    if (counts) {
      ear.taken();
    } else {
      ear.lookAtMe();
    }
    return counts;
  }
}
