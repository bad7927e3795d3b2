package boreledger.station.job.draft;

/** What can be typed into a field. */
public enum Kind {
  /** Words. */
  TEXT(false),
  /** Several words, between commas or semicolons. */
  WORDS(true),
  /** A whole number. */
  COUNT(false),
  /** A length, in millimetres unless it says otherwise. */
  LENGTH(false),
  /** Several lengths. */
  LENGTHS(true),
  /** Several angles in degrees. */
  ANGLES(true),
  /** A temperature in degrees Celsius. */
  CELSIUS(false),
  /** A difference of temperatures in kelvin. */
  KELVIN(false),
  /** An expansion coefficient in millionths per kelvin, or per kelvin when it is below 0.001. */
  COEFFICIENT(false);

  private final boolean list;

  Kind(boolean list) {
    this.list = list;
  }

  /** Whether it takes several values. */
  public boolean isList() {
    return list;
  }

  /** Whether it takes lengths. */
  public boolean isLength() {
    return this == LENGTH || this == LENGTHS;
  }

  /** Whether it takes numbers. */
  public boolean isNumber() {
    return this != TEXT && this != WORDS;
  }
}
