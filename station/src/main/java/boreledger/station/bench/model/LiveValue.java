package boreledger.station.bench.model;

import boreledger.drivers.decoder.Sample;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;

/**
 * What the gauge shows now.
 *
 * @param caption what the value is, and how old it is once it is no longer live
 * @param signed whether the value has a sign: a deviation, or a size that has gone wrong
 * @param sign {@code +}, a minus sign or nothing
 * @param digits the number without its sign; dashes as long as there is none
 * @param unit the unit's symbol
 * @param size the size that a deviation means; empty when the value is no deviation
 * @param live whether the value is fresh
 */
public record LiveValue(
    String caption,
    boolean signed,
    String sign,
    String digits,
    String unit,
    String size,
    boolean live) {
  private static final String NO_DIGITS = "\u2013.\u2013\u2013\u2013\u2013";

  static LiveValue none(Lengths lengths) {
    return new LiveValue(
        BenchText.LIVE_NONE.with(), false, "", NO_DIGITS, lengths.symbol(), "", false);
  }

  /**
   * A sample as a value to show.
   *
   * @param ageS how long ago it came, in seconds
   */
  static LiveValue of(Sitting sitting, Sample sample, double ageS) {
    Lengths lengths = sitting.lengths();
    double mm = sample.valueMm();
    boolean live = ageS < Age.LIVE_S;
    String caption = caption(sitting);
    String sign = lengths.sign(mm);
    boolean showSign = sitting.readsDeviation() || sign.equals(Lengths.MINUS);
    return new LiveValue(
        live ? caption : BenchText.LIVE_STALE.with(caption, Age.words(ageS)),
        showSign,
        showSign ? sign : "",
        lengths.digits(mm),
        lengths.symbol(),
        sitting.readsDeviation() ? BenchText.LIVE_SIZE.with(size(sitting, mm)) : "",
        live);
  }

  /** The value as it is read out, such as {@code +0.0130 mm}. */
  public String words() {
    return sign + digits + " " + unit;
  }

  private static String size(Sitting sitting, double deviationMm) {
    return sitting.lengths().size(sitting.job().setting().sizeMm() + deviationMm);
  }

  private static String caption(Sitting sitting) {
    if (sitting.readsDeviation()) {
      return BenchText.LIVE_DEVIATION.with();
    }
    return switch (sitting.measure()) {
      case BORE -> BenchText.LIVE_BORE.with();
      case GAP -> BenchText.LIVE_GAP.with();
      case RING_DEPTH -> BenchText.LIVE_RING_DEPTH.with();
    };
  }
}
