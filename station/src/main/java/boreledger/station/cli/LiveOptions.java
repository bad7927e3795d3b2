package boreledger.station.cli;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.LiveRequest;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What gauging from a port wants to know, with or without a window. */
final class LiveOptions {
  @Option(names = "--job", required = true, paramLabel = "FILE", description = "The job file.")
  private Path job;

  @Option(
      names = "--gauge",
      required = true,
      paramLabel = "FILE",
      description = "The gauge profile: a file, or the name of a built-in one.")
  private Path gauge;

  @Option(
      names = "--port",
      required = true,
      paramLabel = "PORT",
      description = "The serial port; any path, links included.")
  private String port;

  @Option(
      names = "--measure",
      required = true,
      paramLabel = "WHAT",
      converter = MeasureWord.class,
      completionCandidates = MeasureWords.class,
      description = "What is measured: ${COMPLETION-CANDIDATES}.")
  private Measure measure;

  @Option(names = "--ring", paramLabel = "NAME", description = "The ring, unless bores are gauged.")
  private String ring;

  @Option(
      names = "--setting-temp",
      paramLabel = "DEGC",
      description = "The setting ring's temperature.")
  private Double settingTempC;

  @Option(names = "--block-temp", paramLabel = "DEGC", description = "The block's temperature.")
  private Double blockTempC;

  @Option(names = "--new", description = "Open a new session even if one is unfinished.")
  private boolean fresh;

  Path job() {
    return job;
  }

  LiveRequest request(Path ledger) {
    return new LiveRequest(
        job, gauge, port, measure, ring, settingTempC, blockTempC, ledger, fresh);
  }

  /** Reads {@code bore}, {@code gap} or {@code ring-depth}. */
  static final class MeasureWord implements ITypeConverter<Measure> {
    @Override
    public Measure convert(String text) {
      return Stream.of(Measure.values())
          .filter(measure -> measure.word().equals(text))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'" + text + "' is no measure, expected one of " + words()));
    }

    private static String words() {
      return Stream.of(Measure.values()).map(Measure::word).collect(Collectors.joining(", "));
    }
  }

  /** The words for completion and help. */
  static final class MeasureWords implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      List<String> words = Arrays.stream(Measure.values()).map(Measure::word).toList();
      return words.iterator();
    }
  }
}
