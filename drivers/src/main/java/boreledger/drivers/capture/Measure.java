package boreledger.drivers.capture;

import com.fasterxml.jackson.annotation.JsonValue;

/** The kinds of measurement a session can hold. */
public enum Measure {
  /** Bore diameters against a setting ring. */
  BORE("bore"),
  /** End gaps of one ring. */
  GAP("gap"),
  /** A ring's depth below the deck around the clock. */
  RING_DEPTH("ring-depth");

  private final String word;

  Measure(String word) {
    this.word = word;
  }

  /** The word in files and on the command line. */
  @JsonValue
  public String word() {
    return word;
  }
}
