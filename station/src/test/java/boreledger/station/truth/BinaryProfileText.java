package boreledger.station.truth;

import java.util.Map;

/** The profiles of the invented gauges that send bytes rather than text. */
final class BinaryProfileText {
  private BinaryProfileText() {}

  /** Each profile's text under its file name. */
  static Map<String, String> files() {
    return Map.of(
        "integer-unit-bit.gauge.toml", integerWithUnitBit(),
        "packed-digits.gauge.toml", packedDigits(),
        "silent-count.gauge.toml", silent(),
        "modbus-registers.gauge.toml", modbus());
  }

  private static String integerWithUnitBit() {
    return head(
            """
            # A bore gauge that sends seven bytes per press: 02, a status byte (bit 7 minus, bit 0
            # inch), a count of three bytes, the sum of the five bytes before, 0d. A count is
            # 0.0001 mm or 0.00001 in (0.000254 mm); the coarser step is stated.
            """,
            "Seven bytes with a unit bit",
            "0.000254")
        + """

        [frame]
        kind = "fixed"
        bytes = 7
        starts_with_hex = "02"
        ends_with_hex = "0d"

        [decode]
        kind = "integer"
        at = 2
        bytes = 3
        byte_order = "big"
        scale = 0.0001
        inch_scale = 0.00001
        negative = { at = 1, mask = 0x80 }
        inch = { at = 1, mask = 0x01 }

        [[check]]
        kind = "sum8"
        from = 0
        to = 5
        at = 5
        """
        + press();
  }

  private static String packedDigits() {
    return head(
            """
            # A bore gauge that sends six bytes per press: aa, a byte with the sign in its high half
            # (b plus, d minus) and the digits after the point in its low half, six packed digits
            # with the least significant byte first, 55.
            """,
            "Six bytes of packed digits",
            "0.0001")
        + """

        [frame]
        kind = "fixed"
        bytes = 6
        starts_with_hex = "aa"
        ends_with_hex = "55"

        [decode]
        kind = "packed-digits"
        at = 2
        bytes = 3
        byte_order = "little"
        nibble_order = "high-first"
        decimal_position = { at = 1, mask = 0x0F }
        negative = { at = 1, mask = 0xF0, equals = 0xD0 }
        """
        + press();
  }

  private static String silent() {
    return head(
            """
            # A bore gauge whose messages end by silence: a count of 0.0001 mm in three bytes, least
            # significant first, and their CRC-8.
            """,
            "Four bytes and silence",
            "0.0001")
        + """

        [frame]
        kind = "silence"
        quiet_ms = 50
        max_bytes = 4

        [decode]
        kind = "integer"
        at = 0
        bytes = 3
        byte_order = "little"
        scale = 0.0001

        [[check]]
        kind = "crc"
        from = 0
        to = -1
        at = -1
        width = 8
        polynomial = 0x07
        init = 0
        reflect_in = false
        reflect_out = false
        xor_out = 0
        """
        + press();
  }

  private static String modbus() {
    return head(
            """
            # A bore gauge that is Modbus slave 17 and keeps a count of 0.0001 mm in its input
            # registers 8 and 9. It is asked once per press of a foot switch.
            """,
            "Modbus slave 17",
            "0.0001")
        + """

        [frame]
        kind = "modbus-rtu"

        [decode]
        kind = "modbus-registers"
        slave = 17
        function = 4
        register = 8
        registers = 2
        type = "integer"
        word_order = "big"
        scale = 0.0001

        [ask]
        on = "trigger"
        """
        + press();
  }

  private static String head(String comment, String name, String resolutionMm) {
    return comment
        + """
        format = "boreledger-gauge/1"
        name = "%s"
        reads = "deviation"
        unit = "mm"
        resolution_mm = %s
        max_error_mm = 0.002
        """
            .formatted(name, resolutionMm);
  }

  private static String press() {
    return """

        [pick]
        rule = "press"
        """;
  }
}
