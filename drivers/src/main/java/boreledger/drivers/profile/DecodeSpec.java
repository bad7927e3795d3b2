package boreledger.drivers.profile;

import java.util.regex.Pattern;

/** How a frame becomes a value. */
public sealed interface DecodeSpec {
  /**
   * A regular expression over the frame as ASCII text, with a group {@code value} and perhaps a
   * group {@code unit}.
   */
  record ByPattern(Pattern pattern) implements DecodeSpec {}
}
