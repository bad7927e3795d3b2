package boreledger.station.results;

import boreledger.station.job.Engine;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  /** In plain words; empty when nothing is known. */
  public String words() {
    return statement().map(Wording.PLAIN::of).orElse("");
  }

  /** What is known of them; empty when nothing is. */
  Optional<Statement> statement() {
    List<Statement> known = new ArrayList<>();
    if (condition != null) {
      known.add(("bare".equals(condition) ? Phrase.BLOCK_BARE : Phrase.TORQUE_PLATE_ON).of());
    }
    if (mainCaps != null) {
      boolean torqued = "torqued".equals(mainCaps);
      known.add((torqued ? Phrase.MAIN_CAPS_TORQUED : Phrase.MAIN_CAPS_LOOSE).of());
    }
    return known.stream().reduce(Phrase.AND::of);
  }

  /** Whether both say something of the same thing, and not the same. */
  boolean differFrom(Conditions other) {
    return differ(condition, other.condition) || differ(mainCaps, other.mainCaps);
  }

  private static boolean differ(String one, String other) {
    return one != null && other != null && !one.equals(other);
  }
}
