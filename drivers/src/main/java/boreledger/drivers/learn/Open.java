package boreledger.drivers.learn;

import java.math.BigDecimal;

/** What a reading that fits still leaves open. */
public enum Open {
  /** How it writes a negative value. */
  SIGN("no negative value was shown", "-2.345", "a negative value, to see how it is sent"),
  /** Whether bits that never changed say inch or millimetre. */
  INCH(
      "bytes that never changed could name the unit",
      "12.7",
      "half an inch (12.7 mm), with the gauge switched to inches if it can be"),
  /** Too few values to tell a rule from chance. */
  SIZES("too few different values were shown", "5.000", "another value, well away from zero");

  private final String why;
  private final BigDecimal mm;
  private final String wish;

  Open(String why, String mm, String wish) {
    this.why = why;
    this.mm = new BigDecimal(mm);
    this.wish = wish;
  }

  String why() {
    return why;
  }

  NextValue wish() {
    return new NextValue(mm, wish, this);
  }
}
