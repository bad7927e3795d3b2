package boreledger.drivers.learn;

import static boreledger.drivers.learn.BinaryGauges.with;
import static boreledger.drivers.learn.InventedGauge.of;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Invented gauges of which nothing certain can be said. */
final class UnknowableGauges {
  private UnknowableGauges() {}

  static List<InventedGauge> all() {
    return List.of(
        of("scrambled by its sequence", "0.001", UnknowableGauges::scrambled),
        of("scrambled by its value", "0.001", UnknowableGauges::keyed),
        of("squared", "0.001", r -> with(0xaa).big(r.counts() * r.counts(), 4).hex(0x0d).frame()),
        of("root", "0.001", r -> with(0xaa).big(root(r), 2).hex(0x0d).frame()),
        of("constant", "0.001", r -> with(0xaa, 0x12, 0x34, 0x0d).frame()),
        of("constant text", "0.001", r -> ascii("+0.000 mm\r\n")),
        of("noise", "0.001", UnknowableGauges::noise),
        of("only a sequence number", "0.001", r -> ascii(r.sequence() + "\r\n")),
        of("its reciprocal in text", "0.001", UnknowableGauges::reciprocal),
        of("both probes alike", "0.001", UnknowableGauges::twice));
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] scrambled(Reading r) {
    Random key = new Random(r.sequence() * 7919L);
    return with(0xaa).big(r.counts() ^ key.nextInt(), 4).frame();
  }

  private static byte[] keyed(Reading r) {
    Random key = new Random(r.counts() * 104_729L + 1);
    return with(0xaa).big(key.nextInt(), 4).frame();
  }

  private static long root(Reading r) {
    return Math.round(Math.sqrt(r.magnitude()) * 100) * (r.isNegative() ? -1 : 1);
  }

  private static byte[] noise(Reading r) {
    Random random = new Random(r.noise() * 31L + r.sequence());
    return with(0xaa).big(random.nextLong(), 5).frame();
  }

  private static byte[] reciprocal(Reading r) {
    double number = r.counts() == 0 ? 9999 : 1 / r.valueMm();
    return ascii(String.format(Locale.ROOT, "%+.4f\n", number));
  }

  /** Two numbers that only ever differ where nobody looked: what they mean cannot be told. */
  private static byte[] twice(Reading r) {
    return ascii(String.format(Locale.ROOT, "%1$+.3f %1$+.3f\r\n", r.number()));
  }
}
