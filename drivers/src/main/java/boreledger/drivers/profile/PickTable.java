package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.util.Optional;

/** A profile's {@code [pick]} table, with the defaults of what it leaves out. */
final class PickTable {
  private static final int STUCK_AFTER = 5;
  private static final double SETTLED_FOR_S = 0.8;
  private static final double SETTLED_WITHIN_MM = 0.003;
  private static final double MOVED_MM = 0.02;

  private PickTable() {}

  static PickSpec read(Table table, double resolutionMm) throws FileProblem {
    Value rule = table.required("rule");
    return switch (rule.string()) {
      case "press" -> new PickSpec.Press(integer(table, "stuck_after", STUCK_AFTER, 2));
      case "settle" -> settle(table, resolutionMm);
      case "rock" -> rock(table);
      default -> throw rule.expected("one of \"press\", \"settle\", \"rock\"");
    };
  }

  private static PickSpec settle(Table table, double resolutionMm) throws FileProblem {
    double forS = positive(table, "for_s", SETTLED_FOR_S);
    double withinMm = positive(table, "within_mm", Math.max(2 * resolutionMm, SETTLED_WITHIN_MM));
    double moveMm = positive(table, "move_mm", Math.max(MOVED_MM, 2 * withinMm));
    if (moveMm <= withinMm) {
      throw table
          .required("move_mm")
          .expected("more than the " + withinMm + " mm within which it counts as still");
    }
    return new PickSpec.Settle(forS, withinMm, moveMm);
  }

  private static PickSpec rock(Table table) throws FileProblem {
    return new PickSpec.Rock(
        positive(table, "leaves_above_mm", PickSpec.Rock.DEFAULT.leavesAboveMm()),
        positive(table, "leaves_after_s", PickSpec.Rock.DEFAULT.leavesAfterS()),
        integer(table, "min_rocks", PickSpec.Rock.DEFAULT.minRocks(), 1));
  }

  private static double positive(Table table, String key, double otherwise) throws FileProblem {
    Optional<Value> value = table.optional(key);
    return value.isPresent() ? value.get().positive() : otherwise;
  }

  private static int integer(Table table, String key, int otherwise, int least) throws FileProblem {
    Optional<Value> value = table.optional(key);
    return value.isPresent() ? value.get().integer(least, 1000) : otherwise;
  }
}
