package boreledger.station.bench.model;

import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.DisplayUnit;
import boreledger.station.session.Outcome;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The further gauges of a run, in the order in which they were heard of. */
final class Besides {
  private final Map<String, BesideLine> lines = new LinkedHashMap<>();
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
