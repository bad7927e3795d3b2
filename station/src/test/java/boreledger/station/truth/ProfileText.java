package boreledger.station.truth;

/** The gauge profiles of the sample folder, each an invented gauge. */
final class ProfileText {
  private ProfileText() {}

  static String signedDecimal() {
    return """
        # A bore gauge whose button sends the deviation from the setting, one line per press.
        # On the line: sign, millimetres with three decimals, carriage return, line feed.
        format = "boreledger-gauge/1"
        name = "Signed decimal line"
        reads = "deviation"
        unit = "mm"
        resolution_mm = 0.001
        max_error_mm = 0.002
        """
        + line(9600)
        + lineFrame()
        + """

        [decode]
        pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'

        [pick]
        rule = "press"
        """;
  }

  static String signedDecimalRocked() {
    return """
        # The same kind of gauge, but it streams 25 values a second while it is rocked by hand.
        # In free air its anvils spring out to about 2.6 mm above the setting.
        format = "boreledger-gauge/1"
        name = "Signed decimal line, rocked"
        reads = "deviation"
        unit = "mm"
        resolution_mm = 0.001
        max_error_mm = 0.002
        """
        + line(9600)
        + lineFrame()
        + """

        [decode]
        pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'

        [pick]
        rule = "rock"
        """;
  }

  static String gapLeaf() {
    return """
        # A tapered leaf pushed into the ring's gap; its button sends the width, in steps of 0.005 mm.
        format = "boreledger-gauge/1"
        name = "Gap leaf"
        reads = "size"
        unit = "mm"
        resolution_mm = 0.005
        max_error_mm = 0.005
        """
        + line(4800)
        + lineFrame()
        + """

        [decode]
        pattern = '^(?<value>\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'

        [pick]
        rule = "press"
        """;
  }

  static String fixedComma() {
    return """
        # A bore gauge that sends ten bytes per press: D, sign, two digits, comma, four digits,
        # carriage return. The pattern fits with and without the bytes that frame it.
        format = "boreledger-gauge/1"
        name = "Ten bytes with a comma"
        reads = "deviation"
        unit = "mm"
        resolution_mm = 0.0001
        max_error_mm = 0.002
        """
        + line(4800)
        + """

        [frame]
        kind = "fixed"
        bytes = 10
        starts_with = "D"
        ends_with = "\\r"

        [decode]
        pattern = '^D?(?<value>[+-]\\d{2},\\d{4})\\s?$'

        [pick]
        rule = "press"
        """;
  }

  static String inchOrMm() {
    return """
        # A bore gauge with a unit key: each line names its unit, inches in steps of 0.00005 in
        # (0.00127 mm), millimetres in steps of 0.001 mm. The coarser step is stated.
        format = "boreledger-gauge/1"
        name = "Signed decimal line, inch or millimetre"
        reads = "deviation"
        unit = "in"
        resolution_mm = 0.00127
        max_error_mm = 0.0025
        """
        + line(9600)
        + lineFrame()
        + """

        [decode]
        pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'

        [pick]
        rule = "press"
        """;
  }

  private static String line(int baud) {
    return """

        [line]
        baud = %d
        data_bits = 8
        parity = "none"
        stop_bits = 1
        dtr = true
        rts = true
        """
        .formatted(baud);
  }

  private static String lineFrame() {
    return """

        [frame]
        kind = "line"
        ends_with = "\\r\\n"
        max_bytes = 64
        """;
  }
}
