package boreledger.station.report;

import boreledger.station.results.GaugeUse;
import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What was gauged with, how it was set and how it held its zero. */
final class GaugeSection {
  private static final int VALUE_DECIMALS_MM = 4;
  private static final List<Column> COLUMNS =
      List.of(
          Column.words("Session", 2.7),
          Column.words("Gauge", 2.2),
          Column.words("Resolution, permissible error", 1.9),
          Column.words("Setting, block °C", 1.5),
          Column.words("Opening, closing check", 1.8),
          Column.numbers("Drift", 1.1),
          Column.words("Block stood", 1.8));

  private final LengthFormat lengths;
  private final Typesetter type;

  GaugeSection(LengthFormat lengths, Typesetter type) {
    this.lengths = lengths;
    this.type = type;
  }

  List<Piece> pieces(List<GaugeUse> gauges) {
    List<Piece> pieces = new ArrayList<>(type.heading("Gauges and sessions"));
    pieces.addAll(type.table(COLUMNS, gauges.stream().map(this::row).toList()));
    pieces.addAll(
        type.small(
            "Checks are the gauge's own values on the setting ring; the zero between two checks is"
                + " taken to run straight. Drift has the setting ring's own growth taken off. A"
                + " gap gauge is read as it is and has no such check."));
    return pieces;
  }

  private List<String> row(GaugeUse use) {
    return List.of(
        "No. " + use.session() + ", " + what(use) + "\n" + Times.minute(use.started()),
        use.gauge(),
        lengths.stated(use.resolutionMm()) + "\n± " + lengths.stated(use.maxErrorMm()),
        temperature(use.settingTempC()) + "\n" + temperature(use.blockTempC()),
        value(use.openingMm()) + "\n" + value(use.closingMm()),
        use.driftMm() == null ? "-" : lengths.number(use.driftMm(), decimals()),
        use.conditions().words().isEmpty() ? "not said" : use.conditions().words());
  }

  private static String what(GaugeUse use) {
    String measure = use.measure().replace('-', ' ');
    return use.ring() == null ? measure : measure + ", " + use.ring() + " ring";
  }

  private String value(Double mm) {
    return mm == null ? "-" : lengths.difference(mm, decimals());
  }

  private int decimals() {
    return Math.max(VALUE_DECIMALS_MM, lengths.usualDecimals());
  }

  private static String temperature(Double tempC) {
    if (tempC == null) {
      return "not taken";
    }
    return BigDecimal.valueOf(tempC)
        .setScale(1, RoundingMode.HALF_UP)
        .toPlainString()
        .replace("-", LengthFormat.MINUS);
  }
}
