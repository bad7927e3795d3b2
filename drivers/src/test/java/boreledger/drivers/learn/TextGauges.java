package boreledger.drivers.learn;

import boreledger.drivers.learn.InventedGauge.Chunking;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Invented gauges that send text. */
final class TextGauges {
  private TextGauges() {}

  static List<InventedGauge> all() {
    return List.of(
        text("plus and minus, CRLF", "0.001", r -> signed(r, "%+.3f") + "\r\n"),
        text("decimal comma, CR", "0.0005", r -> signed(r, "%+08.4f").replace('.', ',') + "\r"),
        text("label and unit", "0.001", r -> "BORE: " + signed(r, "%+.3f") + " mm\r\n").heardLate(),
        text("leading spaces, LF", "0.001", r -> signed(r, "%9.3f") + "\n").in(Chunking.CRUMBS),
        text("leading zeros, minus only", "0.001", r -> signed(r, "%08.3f") + "\r"),
        text("sign after", "0.001", r -> size(r, "%06.3f") + (r.isNegative() ? "-" : "+") + "\r\n"),
        text("minus or blank after", "0.01", r -> size(r, "%.2f") + (r.isNegative() ? "-;" : " ;")),
        text("sign apart", "0.001", r -> (r.isNegative() ? "- " : "+ ") + size(r, "%.3f") + "\n"),
        text("unit word after", "0.001", r -> inchOrMm(r) + word(r) + "\r\n").withInch("0.0001"),
        text("unit word before, STX", "0.001", r -> "\2" + word(r) + " " + inchOrMm(r) + "\3")
            .withInch("0.00005")
            .in(Chunking.HALVES),
        text("sequence number", "0.001", TextGauges::numbered).in(Chunking.CRUMBS),
        text("time stamp", "0.001", r -> stamp(r) + " " + signed(r, "%+.3f") + "\r\n"),
        text("value and limit", "0.001", r -> signed(r, "%+.3f") + " LIM +2.000\r\n"),
        text("limit before, semicolon", "0.001", r -> "HI=5.500 V=" + signed(r, "%+.3f") + ";"),
        text("STX and ETX", "0.001", r -> "\2" + signed(r, "%+07.3f") + "\3").heardLate(),
        text("checksum in hex", "0.001", r -> summed("G," + signed(r, "%+.3f") + ",mm")),
        new InventedGauge(
            "STX, ETX, xor behind",
            new BigDecimal("0.001"),
            null,
            new BigDecimal("-12.7"),
            new BigDecimal("12.7"),
            Chunking.HALVES,
            false,
            r -> xorBehind("\2" + signed(r, "%+07.3f") + "\3")),
        text("status words", "0.001", r -> signed(r, "%+.3f") + " " + status(r) + "\r\n"),
        text("two probes", "0.001", r -> "A" + signed(r, "%+.3f") + " B" + other(r) + "\r\n"),
        text("inch mark", "0.01", r -> inchOrMm(r) + (r.isInch() ? "\"" : "mm") + "\r\n")
            .withInch("0.0005"),
        text("exponent", "0.001", r -> signed(r, "%+.5e").toUpperCase(Locale.ROOT) + "\n"),
        text("numbered label, CR", "0.002", r -> "G7 " + signed(r, "%+.3f") + "\r").heardLate(),
        text("a size, never negative", "0.005", r -> signed(r, "%.3f") + " mm\r\n")
            .between("0", "15")
            .in(Chunking.HALVES),
        text("a letter for the sign", "0.001", r -> side(r, "L", "R") + size(r, "%.3f") + "\r\n"),
        text("a letter behind, padded", "0.01", r -> size(r, "%7.2f") + side(r, "n", "p") + "\r"),
        text("sign word behind", "0.001", r -> size(r, "%.3f") + side(r, " MINUS", " PLUS") + "\n")
            .in(Chunking.CRUMBS),
        text(
            "sign word ahead, unit, status",
            "0.001",
            r -> side(r, "NEG ", "POS ") + size(r, "%07.3f") + " mm " + status(r) + "\r\n"),
        text("tab and battery", "0.001", r -> signed(r, "%.3f") + "\t" + battery(r) + "V\r\n"));
  }

  private static InventedGauge text(String name, String stepMm, Function<Reading, String> line) {
    return InventedGauge.of(name, stepMm, r -> line.apply(r).getBytes(StandardCharsets.ISO_8859_1));
  }

  private static String signed(Reading reading, String format) {
    return String.format(Locale.ROOT, format, reading.number());
  }

  private static String size(Reading reading, String format) {
    return String.format(Locale.ROOT, format, reading.number().abs());
  }

  private static String inchOrMm(Reading reading) {
    return (reading.isNegative() ? "-" : "+") + reading.number().abs().toPlainString();
  }

  private static String side(Reading reading, String negative, String positive) {
    return reading.isNegative() ? negative : positive;
  }

  private static String word(Reading reading) {
    return reading.unit().symbol();
  }

  private static String numbered(Reading reading) {
    return String.format(Locale.ROOT, "%04d %+.3f mm\r\n", reading.sequence(), reading.number());
  }

  private static String stamp(Reading reading) {
    int second = reading.sequence() * 3;
    return String.format(
        Locale.ROOT, "08:%02d:%02d.%03d", second / 60, second % 60, reading.noise());
  }

  private static String summed(String body) {
    int sum = body.chars().sum() & 0xff;
    return String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum);
  }

  private static byte[] xorBehind(String body) {
    byte[] bytes = (body + "?").getBytes(StandardCharsets.ISO_8859_1);
    int xor = 0;
    for (int i = 1; i < bytes.length - 1; i++) {
      xor ^= bytes[i];
    }
    bytes[bytes.length - 1] = (byte) xor;
    return bytes;
  }

  private static String status(Reading reading) {
    if (reading.isNegative()) {
      return "LO";
    }
    return reading.valueMm() > 4 ? "HI" : "OK";
  }

  private static String other(Reading reading) {
    return String.format(Locale.ROOT, "%+.3f", (reading.noise() - 128) / 1000.0);
  }

  private static String battery(Reading reading) {
    return String.format(Locale.ROOT, "%.2f", 2.9 + (reading.noise() % 7) / 100.0);
  }
}
