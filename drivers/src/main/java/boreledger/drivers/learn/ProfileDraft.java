package boreledger.drivers.learn;

import boreledger.drivers.profile.LineSettings;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A finding as the text of a gauge profile, with comments saying what was seen. */
final class ProfileDraft {
  private static final BigDecimal WIDE_MM = new BigDecimal("0.02");

  private ProfileDraft() {}

  /**
   * The text.
   *
   * @param line how the line was set; empty when only a recording is known
   */
  static String of(Finding finding, List<ShownValue> shown, Optional<LineSettings> line) {
    StringBuilder text = new StringBuilder();
    String values =
        shown.stream()
            .map(value -> value.number().toPlainString() + " " + value.unit().symbol())
            .collect(Collectors.joining(", "));
    text.append("# Learned from a gauge that showed " + values + ".\n");
    text.append("# It sends " + finding.words() + ".\n");
    finding.remarks().forEach(remark -> text.append("# " + remark + "\n"));
    text.append("format = \"boreledger-gauge/1\"\n");
    text.append("name = \"Learned gauge\"\n");
    text.append("# Write \"size\" here if it shows sizes rather than deviations from a setting.\n");
    text.append("reads = \"deviation\"\n");
    text.append("unit = \"" + finding.unit().symbol() + "\"\n");
    text.append("resolution_mm = " + plain(finding.stepMm()) + "\n");
    text.append("# Bytes cannot tell this. It is set wide: write what the gauge's certificate\n");
    text.append("# or its maker says.\n");
    text.append("max_error_mm = " + plain(WIDE_MM.max(finding.stepMm().multiply(BigDecimal.TEN))));
    text.append("\n\n" + line(line));
    text.append("[frame]\n" + finding.cut().toml().strip() + "\n\n");
    text.append("[decode]\n" + String.join("\n", finding.decode()) + "\n\n");
    if (finding.check() != null) {
      text.append("[[check]]\n" + finding.check().toml() + "\n\n");
    }
    return text + "[pick]\nrule = \"press\"\n";
  }

  private static String line(Optional<LineSettings> settings) {
    if (settings.isEmpty()) {
      return "# A recording does not tell the port's settings; without [line] they are 9600 baud,\n"
          + "# 8 data bits, no parity, 1 stop bit.\n\n";
    }
    LineSettings line = settings.get();
    String stopBits =
        switch (line.stopBits()) {
          case ONE -> "1";
          case ONE_AND_A_HALF -> "1.5";
          case TWO -> "2";
        };
    return String.format(
        Locale.ROOT,
        "[line]%nbaud = %d%ndata_bits = %d%nparity = \"%s\"%nstop_bits = %s%ndtr = %b%nrts = %b%n%n"
            .replace("%n", "\n"),
        line.baud(),
        line.dataBits(),
        line.parity().name().toLowerCase(Locale.ROOT),
        stopBits,
        line.dtr(),
        line.rts());
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
