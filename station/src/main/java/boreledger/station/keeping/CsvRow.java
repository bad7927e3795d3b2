package boreledger.station.keeping;

import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.plan.Position.RingDepth;
import boreledger.station.plan.Position.SettingCheck;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A reading as a line of the CSV export.
 *
 * @param session the number of its session
 * @param opened the session's opening
 * @param reading the reading
 * @param standing whether it counts
 * @param gauge the gauge profile's file name
 * @param entry the reading's entry number
 * @param hash that entry's hash, in hexadecimal
 */
record CsvRow(
    long session,
    SessionOpened opened,
    ReadingTaken reading,
    Standing standing,
    String gauge,
    long entry,
    String hash) {
  /** The header. */
  static final List<String> COLUMNS =
      List.of(
          "session",
          "job",
          "measure",
          "cylinder",
          "depth_mm",
          "axis",
          "ring",
          "clock_deg",
          "setting_check",
          "value_mm",
          "standard_uncertainty_mm",
          "time",
          "t_s",
          "rule",
          "state",
          "why",
          "cautions",
          "gauge",
          "gauge_sha256",
          "entry",
          "hash",
          "raw");

  /**
   * Whether a reading counts.
   *
   * @param state {@code in force}, {@code struck} or {@code replaced}
   * @param why null for a reading in force
   */
  record Standing(String state, String why) {
    static final Standing IN_FORCE = new Standing("in force", null);
  }

  /** The cells in the order of the columns. */
  List<String> cells() {
    return Stream.of(
            List.of(
                Long.toString(session),
                SpreadsheetText.guarded(opened.jobName()),
                opened.measure().word()),
            place(reading.position()),
            List.of(
                number(reading.valueMm()),
                number(reading.standardUncertaintyMm()),
                reading.wall().toString(),
                number(reading.tS()),
                reading.rule(),
                standing.state(),
                SpreadsheetText.guarded(standing.why()),
                SpreadsheetText.guarded(String.join("; ", reading.cautions())),
                SpreadsheetText.guarded(gauge),
                opened.gauge(),
                Long.toString(entry),
                hash,
                raw(reading.samples())))
        .flatMap(List::stream)
        .toList();
  }

  /** Cylinder, depth, axis, ring, clock, setting check. */
  private static List<String> place(Position position) {
    if (position instanceof Bore bore) {
      return place(bore.cylinder(), bore.depthMm(), bore.axis(), null, null);
    } else if (position instanceof Gap gap) {
      return place(gap.cylinder(), gap.depthMm(), null, gap.ring(), null);
    } else if (position instanceof RingDepth depth) {
      return place(depth.cylinder(), depth.depthMm(), null, depth.ring(), depth.clockDeg());
    }
    String check = ((SettingCheck) position).check();
    return Stream.concat(Collections.nCopies(5, "").stream(), Stream.of(check)).toList();
  }

  private static List<String> place(
      int cylinder, double depthMm, String axis, String ring, Double clockDeg) {
    return List.of(
        Integer.toString(cylinder),
        number(depthMm),
        SpreadsheetText.guarded(axis),
        SpreadsheetText.guarded(ring),
        number(clockDeg),
        "");
  }

  /** With all its digits and without an exponent, so that every reader has the same number. */
  private static String number(Double number) {
    return number == null ? "" : new BigDecimal(number.toString()).toPlainString();
  }

  // Hexadecimal digits alone may look like a number with an exponent, 0x... does not.
  private static String raw(List<KeptSample> samples) {
    return samples.stream().map(sample -> "0x" + sample.raw()).collect(Collectors.joining(" "));
  }
}
