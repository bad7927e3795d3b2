package boreledger.station.results;

import boreledger.station.wording.Statement;
import java.util.List;

/**
 * Two sessions of the same places held against each other. In JSON every component goes by its name
 * in snake case; lengths are millimetres, diameters at 20 degrees Celsius and gaps as read.
 *
 * @param ring the ring's name; null for bores
 * @param changes at every place that both sessions read, then what follows from them
 * @param onlyBefore places that only the first session read, in words
 * @param onlyAfter places that only the second one read
 * @param cautions what to mind before believing a change
 */
public record SessionComparison(
    Side before,
    Side after,
    String measure,
    String ring,
    List<Change> changes,
    List<String> onlyBefore,
    List<String> onlyAfter,
    List<Statement> cautions) {
  /** Takes copies of the lists. */
  public SessionComparison {
    changes = List.copyOf(changes);
    onlyBefore = List.copyOf(onlyBefore);
    onlyAfter = List.copyOf(onlyAfter);
    cautions = List.copyOf(cautions);
  }

  /**
   * One of the two.
   *
   * @param started by the clock on the wall, ISO 8601
   */
  public record Side(long session, String job, String started, Conditions conditions) {}

  /**
   * A quantity in both.
   *
   * @param what {@code diameter}, {@code taper}, {@code out-of-round} or {@code gap}
   * @param depthMm null for a taper
   * @param axis null for an out-of-round and for a gap
   * @param changeMm after less before
   * @param expandedUncertaintyMm of the change, for 95 %
   * @param state {@code grew}, {@code shrank} or {@code same within uncertainty}
   */
  public record Change(
      String what,
      int cylinder,
      Double depthMm,
      String axis,
      double beforeMm,
      double afterMm,
      double changeMm,
      double expandedUncertaintyMm,
      String state) {
    /** Judges a change: beyond its expanded uncertainty it is one. */
    static String state(double changeMm, double expandedUncertaintyMm) {
      if (Math.abs(changeMm) <= expandedUncertaintyMm) {
        return "same within uncertainty";
      }
      return changeMm > 0 ? "grew" : "shrank";
    }
  }
}
