package boreledger.station.wording;

import java.util.Locale;

/** Millimetres with four decimals, as terminals, JSON and paper have them in sentences. */
final class PlainFigures implements Figures {
  @Override
  public String length(double mm) {
    return String.format(Locale.ROOT, "%.4f mm", mm);
  }

  @Override
  public String difference(double mm) {
    return String.format(Locale.ROOT, "%+.4f mm", mm);
  }

  @Override
  public String depth(double mm) {
    return String.format(Locale.ROOT, "%.1f mm", mm);
  }

  @Override
  public String ratio(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
