package boreledger.drivers.profile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a frame becomes a value. */
public sealed interface DecodeSpec {
  /**
   * A regular expression that is searched for in the frame's ASCII text, with a group {@code value}
   * and perhaps a group {@code unit}. It must be found once and no more; {@code ^} and {@code $}
   * make it cover the whole frame.
   */
  record ByPattern(Pattern pattern) implements DecodeSpec {
    /** Whether the pattern has a group of this name. */
    public boolean hasGroup(String group) {
      // A matcher answers for a group's name only after a match; the empty alternative gives one.
      Matcher matcher = Pattern.compile("|" + pattern.pattern()).matcher("");
      matcher.find();
      try {
        matcher.start(group);
        return true;
      } catch (IllegalArgumentException e) {
        return false;
      }
    }
  }
}
