package boreledger.station.results;

import boreledger.calc.bore.BoreChange;
import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.BoreSection;
import boreledger.calc.bore.Diameter;
import boreledger.calc.bore.LargestMinusSmallest;
import boreledger.calc.bore.Taper;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.results.Comparing.NotComparable;
import boreledger.station.results.Comparing.One;
import boreledger.station.results.SessionComparison.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What became of bores between two sessions, at the places that both read. */
final class BoreChanges {
  private final List<Change> changes = new ArrayList<>();
  private final int cylinder;

  private final boolean same;

  private BoreChanges(int cylinder, boolean same) {
    this.cylinder = cylinder;
    this.same = same;
  }

  static List<Change> of(One before, One after) throws NotComparable {
    BoreSession first = session(before);
    BoreSession second = session(after);
    List<Change> all = new ArrayList<>();
    int cylinders = Math.min(before.job().engine().cylinders(), after.job().engine().cylinders());
    for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
      BoreChanges changes = new BoreChanges(cylinder, before.session().equals(after.session()));
      changes.compare(first.diameters(cylinder), second.diameters(cylinder));
      all.addAll(changes.changes);
    }
    return all;
  }

  private static BoreSession session(One one) throws NotComparable {
    return BoreSession.of(
            one.job().plan(), one.job(), one.session(), one.stored().gaugeOf(one.session()))
        .orElseThrow(
            () ->
                new NotComparable(
                    "session " + one.session().id() + " has no reading on the setting ring yet"));
  }

  private void compare(List<Diameter> before, List<Diameter> after) {
    List<Diameter> first = common(before, after);
    if (first.isEmpty()) {
      return;
    }
    for (Diameter each : first) {
      Diameter now = at(each, after).orElseThrow();
      add(
          "diameter",
          each.depthMm(),
          each.axis(),
          each.diameterMm(),
          now.diameterMm(),
          new BoreChange(each, now).estimate());
    }
    BoreProfile was = BoreProfile.of(first);
    BoreProfile is = BoreProfile.of(common(after, before));
    for (Taper taper : was.tapers()) {
      range(
          "taper", null, taper.axis(), taper.range(), is.taper(taper.axis()).orElseThrow().range());
    }
    for (int i = 0; i < was.sections().size(); i++) {
      BoreSection section = was.sections().get(i);
      Optional<LargestMinusSmallest> now = is.sections().get(i).range();
      section
          .range()
          .ifPresent(
              then -> range("out-of-round", section.depthMm(), null, then, now.orElseThrow()));
    }
  }

  private void range(
      String what, Double depthMm, String axis, LargestMinusSmallest was, LargestMinusSmallest is) {
    add(
        what,
        depthMm,
        axis,
        was.estimate().valueMm(),
        is.estimate().valueMm(),
        difference(was.estimate(), is.estimate()));
  }

  private void add(
      String what, Double depthMm, String axis, double wasMm, double isMm, Estimate change) {
    // A session's readings held against themselves differ by nothing, and that is certain.
    double expandedMm = (same ? Budget.of() : change.budget()).expandedMm();
    changes.add(
        new Change(
            what,
            cylinder,
            depthMm,
            axis,
            wasMm,
            isMm,
            change.valueMm(),
            expandedMm,
            Change.state(change.valueMm(), expandedMm)));
  }

  /** Within a session whatever is shared has left both ranges: nothing is common to them. */
  private static Estimate difference(Estimate was, Estimate is) {
    return new Estimate(is.valueMm() - was.valueMm(), was.budget().with(is.budget()));
  }

  private static List<Diameter> common(List<Diameter> of, List<Diameter> in) {
    return of.stream().filter(each -> at(each, in).isPresent()).toList();
  }

  private static Optional<Diameter> at(Diameter place, List<Diameter> in) {
    return in.stream()
        .filter(each -> each.depthMm() == place.depthMm() && each.axis().equals(place.axis()))
        .findFirst();
  }
}
