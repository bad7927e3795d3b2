package boreledger.station.cli;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.line.LineFault;
import boreledger.station.app.FootSwitches;
import boreledger.station.app.LiveChoice;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.Pedal;
import boreledger.station.app.UsageProblem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What gauging from a live line wants to know, with or without a window. */
final class LiveOptions {
  private static final double FASTEST = 1000;
  // A port may hold colons: tcp://host:port.
  private static final Pattern ALSO =
      Pattern.compile(
          "(?<gauge>[^@]+)@(?<port>.+?):(?<what>bore|gap|ring-depth)(?::(?<ring>[^:]+))?");

  @Option(names = "--job", paramLabel = "FILE", description = "The job file.")
  private Path job;

  @Option(
      names = "--gauge",
      paramLabel = "FILE",
      description = "The gauge profile: a file, or the name of a built-in one.")
  private Path gauge;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = {
        "The serial port, any path, links included; tcp://host:port for a serial device server;",
        "or keyboard, for a gauge that types its values as lines of standard input."
      })
  private String port;

  @Option(
      names = "--stop-if-gone",
      description = "End with exit status 3 when the line goes away, instead of waiting for it.")
  private boolean stopIfGone;

  @Option(
      names = "--practice",
      description = {
        "Practise instead, without --gauge and --port: a modelled hand gauges bores and rings",
        "that are invented for the job."
      })
  private boolean practice;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Which invented bores and hand to practise with; 1 if left out.")
  private Long seed;

  @Option(
      names = "--pace",
      paramLabel = "TIMES",
      description = "How many times faster than life to practise; 1 if left out.")
  private Double pace;

  @Option(
      names = "--measure",
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

  @Option(
      names = "--record",
      paramLabel = "FILE",
      description = "Also write what the line delivers into a new capture file, for replay.")
  private Path record;

  @Option(
      names = "--also",
      paramLabel = "GAUGE@PORT:WHAT:RING",
      description = {
        "A further gauge, such as depth.gauge.toml@/dev/ttyUSB1:ring-depth:top, whose readings go",
        "into a session of their own in the same ledger, opened when its first one comes. Give it",
        "once for each; bores go without a ring."
      })
  private List<String> also = List.of();

  @Option(
      names = "--switch",
      paramLabel = "PORT=ACTION",
      converter = PedalOption.class,
      description = {
        "A foot switch on a port of its own, or keyboard: each line of text that it sends is one",
        "press. ACTION is read (the gauge is asked for a reading), back (take the last reading",
        "back, or restore it), skip (this position waits until the end), confirm or leave (the",
        "value held last). Several pedals on one port: PORT=TEXT:ACTION, once for each text."
      })
  private List<Pedal> pedals = List.of();

  /** The job file; null when none was named. */
  Path job() {
    return job;
  }

  /** Whether nothing at all was said, so that a person is to be asked. */
  boolean isSilent() {
    return job == null && gauge == null && port == null && measure == null && !practice;
  }

  /** Takes the invented engine's bores where a person wants to practise and names no job. */
  void practiseOn(Path sampleJob) {
    if (practice && job == null) {
      job = sampleJob;
      measure = measure == null ? Measure.BORE : measure;
    }
  }

  /** Opens the foot switches; often none. */
  FootSwitches footSwitches() throws UsageProblem, LineFault {
    Set<String> gauges = new HashSet<>();
    if (port != null) {
      gauges.add(port);
    }
    for (LiveRequest.Also each : alsoListening()) {
      gauges.add(each.gauge().port());
    }
    return FootSwitches.open(pedals, gauges);
  }

  LiveRequest request(Path ledger) throws UsageProblem {
    if (job == null || measure == null) {
      throw new UsageProblem((job == null ? "--job" : "--measure") + " is missing");
    }
    return new LiveRequest(
        job,
        listening(),
        measure,
        ring,
        settingTempC,
        blockTempC,
        ledger,
        fresh,
        record,
        alsoListening());
  }

  private LiveChoice listening() throws UsageProblem {
    if (practice) {
      return practice();
    } else if (gauge == null || port == null) {
      throw new UsageProblem(
          (gauge == null ? "--gauge" : "--port") + " is missing; give both, or --practice instead");
    } else if (seed != null || pace != null) {
      throw new UsageProblem((seed != null ? "--seed" : "--pace") + " goes with --practice only");
    }
    return new LiveChoice.Gauge(gauge, port, !stopIfGone);
  }

  private List<LiveRequest.Also> alsoListening() throws UsageProblem {
    if (practice && !also.isEmpty()) {
      throw new UsageProblem("--practice goes without --also");
    }
    List<LiveRequest.Also> gauges = new ArrayList<>();
    for (String text : also) {
      Matcher parts = ALSO.matcher(text);
      if (!parts.matches()) {
        throw new UsageProblem(
            "--also " + text + " is not GAUGE@PORT:WHAT:RING, WHAT one of " + MeasureWord.words());
      }
      Path profile = Path.of(parts.group("gauge"));
      gauges.add(
          new LiveRequest.Also(
              new LiveChoice.Gauge(profile, parts.group("port"), !stopIfGone),
              new MeasureWord().convert(parts.group("what")),
              parts.group("ring")));
    }
    return gauges;
  }

  private LiveChoice practice() throws UsageProblem {
    if (gauge != null || port != null) {
      throw new UsageProblem("--practice brings its own gauge; leave --gauge and --port out");
    }
    double times = pace == null ? 1 : pace;
    if (!(times > 0) || times > FASTEST) {
      throw new UsageProblem("--pace " + times + " is not above 0 and at most " + FASTEST);
    }
    return new LiveChoice.Practice(seed == null ? 1 : seed, times);
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
