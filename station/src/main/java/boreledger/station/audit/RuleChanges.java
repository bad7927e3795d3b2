package boreledger.station.audit;

import boreledger.drivers.pick.PickEvent;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.rules.ReadingRules;
import boreledger.station.session.Version;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Collects the figures of readings that the rules of now would give otherwise. */
final class RuleChanges {
  private final List<ThenAndNow> kept = new ArrayList<>();
  private long inAll;

  /** The first of them. */
  List<ThenAndNow> list() {
    return List.copyOf(kept);
  }

  /** How many there are. */
  long inAll() {
    return inAll;
  }

  /** Looks at a reading that a version of the program took. */
  void look(long seq, ReadingTaken reading, String program, ReadingAgain again) {
    ReadingRules then = ReadingRules.of(program);
    if (then == ReadingRules.now()) {
      return;
    }
    PickEvent.Picked before = again.picked(reading, then);
    PickEvent.Picked after = again.picked(reading, ReadingRules.now());
    if (before != null && after != null) {
      Figures figures = new Figures(seq, reading.position().words(), program, then);
      compare(figures, "value_mm", before.valueMm(), after.valueMm());
      compare(
          figures,
          "standard_uncertainty_mm",
          before.standardUncertaintyMm(),
          after.standardUncertaintyMm());
      compare(figures, "t_s", before.tS(), after.tS());
    }
  }

  private record Figures(long seq, String position, String program, ReadingRules then) {}

  private void compare(Figures of, String figure, Double then, Double now) {
    if (Objects.equals(then, now)) {
      return;
    }
    inAll++;
    if (kept.size() < Remarks.MOST_KEPT) {
      kept.add(
          new ThenAndNow(
              of.seq(),
              of.position(),
              figure,
              then,
              of.program(),
              of.then().words(),
              now,
              Version.PROGRAM,
              ReadingRules.now().words()));
    }
  }
}
