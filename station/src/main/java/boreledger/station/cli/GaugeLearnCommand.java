package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.app.GaugeLearning;
import boreledger.station.app.GaugeLearning.Reading;
import boreledger.station.app.UsageProblem;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** A profile for a gauge that no profile knows. */
@Command(
    name = "learn",
    description = "Finds out what a gauge sends from a few values it shows, and writes a profile.",
    footer = {
      "",
      "Set the gauge to each value and press its button. A profile is written only when exactly",
      "one reading of the bytes fits; else the answer says what to show next.",
      "Example: boreledger gauge learn --capture my.capture.jsonl --shows 0.000,1.000,5.000",
      "  --out my.gauge.toml",
      "Example: boreledger gauge learn --port /dev/ttyUSB0 --shows 0.000,1.000,5.000,-2.345",
      "  --out my.gauge.toml"
    })
final class GaugeLearnCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @ArgGroup(multiplicity = "1")
  private Source source;

  @Option(
      names = "--shows",
      required = true,
      paramLabel = "VALUES",
      description = "The values shown, in their order, such as 0.000,1.000,5.000 or 0.5in.")
  private String shows;

  @Option(
      names = "--unit",
      defaultValue = "mm",
      paramLabel = "UNIT",
      converter = UnitWord.class,
      description = "The unit of values that name none: mm or in (default: mm).")
  private LengthUnit unit;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The profile to write; a file that is there already is left alone.")
  private Path out;

  /** Where the bytes come from. */
  static final class Source {
    @Option(
        names = "--capture",
        required = true,
        paramLabel = "FILE",
        description = "What the gauge sent while it showed them.")
    private Path capture;

    @Option(
        names = "--port",
        required = true,
        paramLabel = "PORT",
        description = "The serial port where the gauge is; its settings are found out as well.")
    private String port;
  }

  /** A unit, as it is written. */
  static final class UnitWord implements ITypeConverter<LengthUnit> {
    @Override
    public LengthUnit convert(String word) {
      return Arrays.stream(LengthUnit.values())
          .filter(unit -> unit.symbol().equals(word))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("'" + word + "' is neither mm nor in"));
    }
  }

  @Override
  public Integer call() throws FileProblem, UsageProblem, LineFault {
    GaugeLearning learning =
        source.capture == null
            ? GaugeLearning.fromPort(source.port, shows, unit, out, answer::tell)
            : GaugeLearning.fromCapture(source.capture, shows, unit, out);
    answer.print(learning, words(learning));
    return ExitStatus.attentionIf(!learning.certain());
  }

  private static String words(GaugeLearning learning) {
    StringBuilder words = new StringBuilder();
    words.append(learning.certain() ? "Certain: " : "Not certain: ").append(learning.why());
    words.append(".").append(System.lineSeparator());
    for (Reading candidate : learning.candidates()) {
      words.append("  ").append(candidate.words()).append(System.lineSeparator());
    }
    if (learning.certain()) {
      words.append("Written: ").append(learning.profile());
      words.append("; put in its maximum error from the certificate before you gauge with it.");
    } else if (learning.showNext() != null) {
      words.append("Show next: ").append(learning.showNext()).append(".");
    }
    return words.toString();
  }
}
