package boreledger.station.keeping;

/**
 * Text in a CSV cell that no spreadsheet takes for a formula. Before a text that begins with {@code
 * = + - @}, a tab, a line break or the wide forms of these signs goes an apostrophe (OWASP, "CSV
 * Injection"), and likewise before one that begins with an apostrophe itself: whoever reads the
 * file back drops one apostrophe at the beginning of a cell and has the text again. Numbers are no
 * text: they stand as they are, signs included.
 */
final class SpreadsheetText {
  private static final String DANGEROUS = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20'";

  private SpreadsheetText() {}

  /** The text as it goes into a cell; null, for what is not known, becomes an empty one. */
  static String guarded(String text) {
    if (text == null || text.isEmpty()) {
      return "";
    }
    return DANGEROUS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
