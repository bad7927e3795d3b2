package boreledger.drivers.learn;

import static boreledger.drivers.learn.InventedGauge.of;

import boreledger.drivers.learn.InventedGauge.Chunking;
import java.util.List;

/** Invented gauges that send whole numbers or floating-point numbers. */
final class BinaryGauges {
  private BinaryGauges() {}

  static List<InventedGauge> all() {
    return List.of(
        of("int16 big, sum", "0.001", BinaryGauges::summed16).in(Chunking.HALVES),
        of("int24 little, STX ETX", "0.0001", r -> with(2).little(r.counts(), 3).hex(3).frame()),
        of("int32 big, bare", "0.0001", r -> with().big(r.counts(), 4).frame()),
        of(
            "int32 little, xor",
            "0.00001",
            r -> with(0xa5).little(r.counts(), 4).check(0, Layout::xor).frame()),
        of("int16 little, counter", "0.0005", BinaryGauges::counted),
        of("int16 big, 0.00127", "0.00127", r -> with(0x68, 0).big(r.counts(), 2).hex(13).frame()),
        of("int16 big, 1/256", "0.00390625", r -> with(0x5a).big(r.counts(), 2).hex(0x0d).frame())
            .in(Chunking.CRUMBS),
        of("sign-magnitude 16", "0.001", BinaryGauges::signMagnitude).heardLate(),
        of("sign in status", "0.0001", r -> magnitude(r, 0x10, 0).frame()),
        of("inch bit", "0.001", BinaryGauges::inchBit).withInch("0.0001").in(Chunking.HALVES),
        of(
                "sign and inch bits, CRC",
                "0.001",
                r -> magnitude(r, 2, 8).littleCrc(0, Crc.MODBUS).frame())
            .withInch("0.00005"),
        of(
            "int32 big, CRC-16",
            "0.0001",
            r -> with(0x7e, 0x21).big(r.counts(), 4).bigCrc(1, Crc.CCITT).frame()),
        of(
            "int24 big, CRC-8",
            "0.0002",
            r -> with(0xc3).big(r.counts(), 3).bigCrc(0, Crc.EIGHT).frame()),
        of("noise and counter", "0.0001", BinaryGauges::noisy).heardLate(),
        of("length byte", "0.002", r -> with(0xfe, 2).big(r.counts(), 2).hex(0xef).frame())
            .heardLate(),
        of("float big", "0.001", r -> with(0xf0).bigFloat(number(r)).hex(0x0a).frame()),
        of("float little, sum", "0.0001", BinaryGauges::summedFloat).in(Chunking.CRUMBS),
        of("double little, bare", "0.0001", r -> with().littleDouble(r.valueMm()).frame()),
        of("float big, inch bit", "0.001", BinaryGauges::inchFloat).withInch("0.0001"),
        of("float little, status", "0.001", r -> with(0, 1).littleFloat(number(r)).frame()));
  }

  static Layout with(int... start) {
    return new Layout().hex(start);
  }

  private static float number(Reading reading) {
    return reading.number().floatValue();
  }

  private static byte[] summed16(Reading r) {
    return with(0xaa, 0x55).big(r.counts(), 2).check(0, Layout::sum).frame();
  }

  private static byte[] counted(Reading r) {
    return with(0x5b, r.sequence()).little(r.counts(), 2).hex(0x5d).frame();
  }

  private static byte[] signMagnitude(Reading r) {
    int sign = r.isNegative() ? 0x8000 : 0;
    return with(0x55, 0x1c).big(r.magnitude() | sign, 2).frame();
  }

  private static Layout magnitude(Reading r, int negative, int inch) {
    int status = (r.isNegative() ? negative : 0) | (r.isInch() ? inch : 0);
    return with(0x3c, status).little(r.magnitude(), 3);
  }

  private static byte[] inchBit(Reading r) {
    return with(0x96).little(r.counts(), 4).hex(r.isInch() ? 0x05 : 0x01, 0x69).frame();
  }

  private static byte[] noisy(Reading r) {
    return with(0xa0, r.noise(), r.sequence()).little(r.counts(), 4).check(1, Layout::sum).frame();
  }

  private static byte[] summedFloat(Reading r) {
    return with(0x24).littleFloat(number(r)).check(1, Layout::sum).frame();
  }

  private static byte[] inchFloat(Reading r) {
    return with(0x4b, r.isInch() ? 0x80 : 0).bigFloat(number(r)).hex(0x0d).frame();
  }
}
