package boreledger.station.rules;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** A version of the program, such as {@code 0.1.0}; what follows a hyphen does not count. */
record ProgramVersion(List<Integer> parts) implements Comparable<ProgramVersion> {
  private static final Pattern PLAIN = Pattern.compile("\\d{1,6}\\.\\d{1,6}\\.\\d{1,6}(-.*)?");

  /** The version that a text names; null when it names none. */
  static ProgramVersion of(String text) {
    if (text == null || !PLAIN.matcher(text).matches()) {
      return null;
    }
    String[] numbers = text.split("-", 2)[0].split("\\.");
    return new ProgramVersion(Arrays.stream(numbers).map(Integer::valueOf).toList());
  }

  @Override
  public int compareTo(ProgramVersion other) {
    return Arrays.compare(parts.toArray(Integer[]::new), other.parts.toArray(Integer[]::new));
  }
}
