package boreledger.drivers.file;

/** Text from outside, made fit to stand in a message of one line. */
public final class OneLine {
  private static final int LONGEST = 60;

  private OneLine() {}

  /**
   * The text with control characters shown as question marks and, beyond 60 characters, its tail as
   * dots.
   *
   * @param text what to show; null is shown as {@code nothing}
   */
  public static String of(String text) {
    if (text == null) {
      return "nothing";
    }
    String whole = text.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]", "?");
    return whole.length() <= LONGEST ? whole : whole.substring(0, LONGEST) + "...";
  }
}
