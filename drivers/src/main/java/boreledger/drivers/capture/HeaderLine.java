package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** The first line of a capture file. */
final class HeaderLine {
  static final String FORMAT = "boreledger-capture/1";
  private static final double COLDEST_C = -40;
  private static final double WARMEST_C = 80;
  // RFC 3339, section 5.6, date-time.
  private static final String DATE_TIME =
      "\\d{4}-\\d\\d-\\d\\d[Tt](?:[01]\\d|2[0-3]):\\d\\d:\\d\\d(?:\\.\\d+)?(?:[Zz]|[+-]\\d\\d:\\d\\d)";

  private HeaderLine() {}

  static CaptureHeader read(JsonLine line) throws FileProblem {
    if (!line.string("format").equals(FORMAT)) {
      throw line.expected("format", '"' + FORMAT + '"');
    }
    String gauge = filled(line, "gauge");
    Measure measure = measure(line);
    CaptureHeader header =
        new CaptureHeader(
            gauge,
            measure,
            ring(line, measure),
            instant(line, "started"),
            temperatureC(line, "setting_temp_c"),
            temperatureC(line, "block_temp_c"));
    line.done();
    return header;
  }

  private static String filled(JsonLine line, String key) throws FileProblem {
    if (line.string(key).isBlank()) {
      throw line.expected(key, "a text");
    }
    return line.string(key);
  }

  private static Measure measure(JsonLine line) throws FileProblem {
    String word = line.string("measure");
    Optional<Measure> measure =
        Arrays.stream(Measure.values()).filter(m -> m.word().equals(word)).findFirst();
    if (measure.isEmpty()) {
      String words =
          Arrays.stream(Measure.values())
              .map(m -> '"' + m.word() + '"')
              .collect(Collectors.joining(", "));
      throw line.expected("measure", "one of " + words);
    }
    return measure.get();
  }

  private static String ring(JsonLine line, Measure measure) throws FileProblem {
    if (measure != Measure.BORE) {
      return filled(line, "ring");
    }
    if (line.has("ring")) {
      throw line.problem("ring is not for a bore capture, expected no ring");
    }
    return null;
  }

  private static Instant instant(JsonLine line, String key) throws FileProblem {
    String text = line.string(key);
    try {
      if (text.matches(DATE_TIME)) {
        return Instant.parse(text);
      }
    } catch (DateTimeParseException e) {
      // Falls through: the shape was right, but there is no such day or time.
    }
    throw line.expected(key, "a date and time such as \"2031-05-06T08:00:00Z\"");
  }

  private static Double temperatureC(JsonLine line, String key) throws FileProblem {
    if (!line.has(key)) {
      return null;
    }
    double foundC = line.number(key);
    if (foundC < COLDEST_C || foundC > WARMEST_C) {
      throw line.expected(key, "a temperature from " + COLDEST_C + " to " + WARMEST_C + " °C");
    }
    return foundC;
  }
}
