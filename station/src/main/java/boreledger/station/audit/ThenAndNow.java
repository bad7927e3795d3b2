package boreledger.station.audit;

import java.math.BigDecimal;

/**
 * A figure that the program computed by other rules when it was written: as it was then, which is
 * how it is stored, and as it would be now. Nobody altered it.
 *
 * @param entry the reading's entry
 * @param position where it was taken, in words
 * @param figure what is computed, such as {@code value_mm}
 * @param asThen by the rules of then; null when they gave none
 * @param programThen the version that took the reading
 * @param rulesThen what its rules say, in words
 * @param asNow by the rules of now; null when they give none
 * @param programNow the version that checks
 * @param rulesNow what its rules say, in words
 */
public record ThenAndNow(
    long entry,
    String position,
    String figure,
    Double asThen,
    String programThen,
    String rulesThen,
    Double asNow,
    String programNow,
    String rulesNow) {
  /** In one line. */
  String words() {
    return "entry "
        + entry
        + ", "
        + position
        + ": "
        + figure
        + " "
        + plain(asThen)
        + " as program "
        + programThen
        + " computed it, "
        + plain(asNow)
        + " as "
        + programNow
        + " does";
  }

  private static String plain(Double figure) {
    return figure == null ? "none" : new BigDecimal(figure.toString()).toPlainString();
  }
}
