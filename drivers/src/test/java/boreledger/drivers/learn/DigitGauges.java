package boreledger.drivers.learn;

import static boreledger.drivers.learn.BinaryGauges.with;
import static boreledger.drivers.learn.InventedGauge.of;
import static boreledger.drivers.learn.Layout.nibblesSwapped;
import static boreledger.drivers.learn.Layout.packed;

import boreledger.drivers.learn.InventedGauge.Chunking;
import java.util.List;

/** Invented gauges that send packed decimal digits. */
final class DigitGauges {
  private DigitGauges() {}

  static List<InventedGauge> all() {
    return List.of(
        of("digits high first, sign byte", "0.001", r -> signByte(r).big(digits(r), 3).frame()),
        of("digits little, sign byte", "0.001", r -> signByte(r).little(digits(r), 3).frame()),
        of("digits low first, sign bit", "0.001", DigitGauges::lowFirst).in(Chunking.CRUMBS),
        of("digits low first, little", "0.0001", DigitGauges::lowFirstLittle).heardLate(),
        of("sign nibble within", "0.001", DigitGauges::signNibble),
        of("decimal position, inch bit", "0.001", DigitGauges::decimalPosition).withInch("0.0001"),
        of(
                "digits, xor",
                "0.0001",
                r -> signByte(r).big(digits(r), 4).check(0, Layout::xor).frame())
            .in(Chunking.HALVES));
  }

  private static long digits(Reading reading) {
    return packed(reading.magnitude());
  }

  private static Layout signByte(Reading reading) {
    return with(0x1d, reading.isNegative() ? 0x2d : 0x2b);
  }

  private static byte[] lowFirst(Reading r) {
    return with(0xe1).big(nibblesSwapped(digits(r)), 3).hex(r.isNegative() ? 0x81 : 0x01).frame();
  }

  private static byte[] lowFirstLittle(Reading r) {
    return with(0x91, r.isNegative() ? 1 : 0)
        .little(nibblesSwapped(digits(r)), 3)
        .hex(0x19)
        .frame();
  }

  private static byte[] signNibble(Reading r) {
    long sign = r.isNegative() ? 0xd00000L : 0xc00000L;
    return with(0xb4).big(digits(r) | sign, 3).hex(0x4b).frame();
  }

  private static byte[] decimalPosition(Reading r) {
    int status = (r.isInch() ? 0x10 : 0) | (r.isNegative() ? 0x80 : 0) | r.step().scale();
    return with(0xd2, status).big(digits(r), 3).hex(0x0a).frame();
  }
}
