package boreledger.station.wording;

import boreledger.station.plan.Position;
import java.util.List;

/** What fills in a phrase. */
public sealed interface Part
    permits Statement,
        Part.Length,
        Part.Difference,
        Part.Depth,
        Part.Ratio,
        Part.Name,
        Part.Place,
        Part.Several,
        Part.Recorded {
  /** A size in millimetres. */
  record Length(double mm) implements Part {}

  /** A difference in millimetres, told with its sign. */
  record Difference(double mm) implements Part {}

  /** A depth below the deck in millimetres. */
  record Depth(double mm) implements Part {}

  /** A number that is no length, told with so many decimals. */
  record Ratio(double value, int decimals) implements Part {}

  /** A name or a number that is the same in every language. */
  record Name(String name) implements Part {
    /** A number of something. */
    public static Name of(long number) {
      return new Name(Long.toString(number));
    }
  }

  /** A place that was gauged. */
  record Place(Position position) implements Part {}

  /** Several, with commas between them. */
  record Several(List<Part> parts) implements Part {
    /** Takes a copy of the list. */
    public Several {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A sentence that came as text, from a gauge, a table or the ledger; see {@link
   * RecordedSentence}.
   */
  record Recorded(String english) implements Part {}
}
