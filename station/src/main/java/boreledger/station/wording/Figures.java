package boreledger.station.wording;

/** How numbers are written at one place, such as on a terminal or in a window that shows inches. */
public interface Figures {
  /** A size with its unit. */
  String length(double mm);

  /** A difference with its sign and unit. */
  String difference(double mm);

  /** A depth with its unit. */
  String depth(double mm);

  /** A number that is no length. */
  String ratio(double value, int decimals);
}
