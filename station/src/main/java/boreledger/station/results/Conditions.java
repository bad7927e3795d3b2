package boreledger.station.results;

import boreledger.station.job.Engine;
import java.util.ArrayList;
import java.util.List;

/**
 * How a block stood while it was gauged. A bore's shape follows what is bolted to the block, so
 * only readings of the same conditions compare.
 *
 * @param condition {@code bare} or {@code torque-plate}; null when the job does not say
 * @param mainCaps {@code torqued} or {@code loose}; null when the job does not say
 */
public record Conditions(String condition, String mainCaps) {
  /** The conditions that a job states. */
  static Conditions of(Engine engine) {
    return new Conditions(engine.condition(), engine.mainCaps());
  }

  /** In words; empty when nothing is known. */
  public String words() {
    List<String> words = new ArrayList<>();
    if (condition != null) {
      words.add("bare".equals(condition) ? "block bare" : "torque plate on");
    }
    if (mainCaps != null) {
      words.add("main caps " + mainCaps);
    }
    return String.join(", ", words);
  }

  /** Whether both say something of the same thing, and not the same. */
  boolean differFrom(Conditions other) {
    return differ(condition, other.condition) || differ(mainCaps, other.mainCaps);
  }

  private static boolean differ(String one, String other) {
    return one != null && other != null && !one.equals(other);
  }
}
