package boreledger.station.results;

import boreledger.calc.ring.GapReading;
import boreledger.calc.uncertainty.Budget;
import boreledger.station.job.Ring;
import boreledger.station.results.Comparing.NotComparable;
import boreledger.station.results.Comparing.One;
import boreledger.station.results.SessionComparison.Change;
import java.util.ArrayList;
import java.util.List;

/** What became of a ring's gaps between two sessions, as read, at the depths that both read. */
final class GapChanges {
  private GapChanges() {}

  static List<Change> of(One before, One after) throws NotComparable {
    GapSession first = session(before);
    GapSession second = session(after);
    boolean same = before.session().equals(after.session());
    List<Change> changes = new ArrayList<>();
    int cylinders = Math.min(before.job().engine().cylinders(), after.job().engine().cylinders());
    for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
      for (GapReading was : first.gaps(cylinder)) {
        for (GapReading is : second.gaps(cylinder)) {
          if (was.depthMm() == is.depthMm()) {
            changes.add(change(cylinder, was, is, same));
          }
        }
      }
    }
    return changes;
  }

  /** The readings have nothing in common but when they are the same ones. */
  private static Change change(int cylinder, GapReading was, GapReading is, boolean same) {
    double changeMm = is.gapMm() - was.gapMm();
    Budget budget = same ? Budget.of() : was.budget().with(is.budget());
    double expandedMm = budget.expandedMm();
    return new Change(
        "gap",
        cylinder,
        was.depthMm(),
        null,
        was.gapMm(),
        is.gapMm(),
        changeMm,
        expandedMm,
        Change.state(changeMm, expandedMm));
  }

  private static GapSession session(One one) throws NotComparable {
    String name = one.session().opened().ring();
    Ring ring =
        one.job().rings().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new NotComparable("the job has no ring " + name));
    return new GapSession(ring, one.session(), one.stored().gaugeOf(one.session()));
  }
}
