package boreledger.drivers.learn;

import boreledger.drivers.profile.CheckSpec.Cyclic;
import boreledger.drivers.profile.CheckSpec.Sum;
import boreledger.drivers.profile.CheckSpec.Sum8;
import boreledger.drivers.profile.CheckSpec.Xor8;
import boreledger.drivers.profile.Crc;
import java.util.List;
import java.util.Locale;

/** The checks that gauges commonly send, and how a profile names them. */
final class CommonChecks {
  /** Every way that is tried: sums, then the common cyclic redundancy checks. */
  static final List<Sum> ALL =
      List.of(
          new Sum8(),
          new Xor8(),
          cyclic(8, 0x07, 0, false, 0),
          cyclic(8, 0x07, 0xff, false, 0),
          cyclic(8, 0x31, 0, true, 0),
          cyclic(8, 0x31, 0xff, false, 0),
          new Cyclic(Crc.MODBUS),
          cyclic(16, 0x8005, 0, true, 0),
          cyclic(16, 0x1021, 0xffff, false, 0),
          cyclic(16, 0x1021, 0, false, 0),
          cyclic(16, 0x1021, 0, true, 0),
          cyclic(16, 0x1021, 0xffff, true, 0xffff),
          cyclic(32, 0x04c11db7L, 0xffffffffL, true, 0xffffffffL));

  private CommonChecks() {}

  private static Cyclic cyclic(
      int width, long polynomial, long init, boolean reflected, long xorOut) {
    return new Cyclic(new Crc(width, polynomial, init, reflected, reflected, xorOut));
  }

  /** Its keys in a profile's {@code [[check]]} table. */
  static String toml(Sum sum) {
    String kind = "kind = \"" + sum.kind() + "\"";
    return sum instanceof Cyclic cyclic ? kind + "\n" + toml(cyclic.crc()) : kind;
  }

  private static String toml(Crc crc) {
    return String.format(
        Locale.ROOT,
        """
        width = %d
        polynomial = 0x%X
        init = 0x%X
        reflect_in = %b
        reflect_out = %b
        xor_out = 0x%X""",
        crc.width(),
        crc.polynomial(),
        crc.init(),
        crc.reflectIn(),
        crc.reflectOut(),
        crc.xorOut());
  }
}
