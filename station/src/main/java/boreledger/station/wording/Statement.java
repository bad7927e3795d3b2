package boreledger.station.wording;

import java.util.List;

/**
 * Something to be told to a person, such as that a zero drifted by 0.0041 mm: what it is, and what
 * fills it in, without the words.
 */
public record Statement(Phrase phrase, List<Part> parts) implements Part {
  /** Takes a copy of the list. */
  public Statement {
    parts = List.copyOf(parts);
  }
}
