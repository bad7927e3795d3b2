package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;

/** Reads a capture's header. */
final class HeaderLine {
  private static final String FORMAT = "boreledger-capture/1";
  private static final List<String> KEYS =
      List.of("format", "gauge", "measure", "ring", "started", "setting_temp_c", "block_temp_c");
  private static final double COLDEST_C = -40;
  private static final double HOTTEST_C = 80;

  private HeaderLine() {}

  static CaptureHeader read(JsonLine line) throws FileProblem {
    line.oneOf("format", List.of(FORMAT), word -> word);
    line.onlyKeys(KEYS);
    Measure measure = line.oneOf("measure", List.of(Measure.values()), Measure::word);
    return new CaptureHeader(
        line.text("gauge"),
        measure,
        ring(line, measure),
        started(line),
        temperature(line, "setting_temp_c"),
        temperature(line, "block_temp_c"));
  }

  private static String ring(JsonLine line, Measure measure) throws FileProblem {
    if (measure != Measure.BORE) {
      return line.text("ring");
    }
    if (line.has("ring")) {
      throw line.problem("ring is given, expected none for the measure bore");
    }
    return null;
  }

  private static Instant started(JsonLine line) throws FileProblem {
    try {
      return OffsetDateTime.parse(line.text("started")).toInstant();
    } catch (DateTimeParseException e) {
      throw line.expected("started", "a moment such as 2031-05-06T08:00:00Z");
    }
  }

  private static Double temperature(JsonLine line, String key) throws FileProblem {
    if (!line.has(key)) {
      return null;
    }
    double tempC = line.number(key);
    if (tempC < COLDEST_C || tempC > HOTTEST_C) {
      throw line.expected(key, "degrees Celsius from -40 to 80");
    }
    return tempC;
  }
}
