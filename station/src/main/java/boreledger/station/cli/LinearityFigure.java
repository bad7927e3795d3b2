package boreledger.station.cli;

import boreledger.calc.study.Bias;
import boreledger.calc.study.Interval;
import boreledger.calc.study.LinearityStudy;
import boreledger.calc.study.ReferenceReading;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.CsvTable;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A gauge's bias over its range. */
@Command(
    name = "linearity",
    description = "Works out a gauge's bias and linearity against reference rings.",
    footer = {
      "",
      "The file is CSV with the columns reference, value.",
      "Example: boreledger figure linearity --file rings.csv"
    })
final class LinearityFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--file", required = true, paramLabel = "FILE", description = "The readings.")
  private Path file;

  /** The answer; intervals are for 95 %. */
  record Figure(
      Line slope, Line intercept, List<AtReference> biases, boolean zeroInBandThroughout) {}

  /** An estimate and the half-width of its interval. */
  record Line(double estimate, double halfWidth) {
    static Line of(Interval interval) {
      return new Line(interval.estimate(), interval.halfWidth());
    }
  }

  /** The mean deviation on one reference, and the line's band there. */
  record AtReference(double reference, double bias, Line line) {}

  @Override
  public Integer call() throws FileProblem {
    LinearityStudy study =
        LinearityStudy.of(
            CsvTable.read(
                file,
                List.of("reference", "value"),
                row -> new ReferenceReading(row.number("reference"), row.number("value"))));
    Figure figure =
        new Figure(
            Line.of(study.slope()),
            Line.of(study.intercept()),
            study.biases().stream().map(bias -> at(study, bias)).toList(),
            study.zeroInBandThroughout());
    answer.print(figure, words(figure));
    return ExitStatus.attentionIf(!figure.zeroInBandThroughout());
  }

  private static AtReference at(LinearityStudy study, Bias bias) {
    return new AtReference(bias.reference(), bias.amount(), Line.of(study.band(bias.reference())));
  }

  private static String words(Figure figure) {
    StringBuilder words = new StringBuilder();
    for (AtReference each : figure.biases()) {
      words.append(
          String.format(
              Locale.ROOT,
              "at %s: bias %+.6f, line %+.6f ± %.6f%n",
              each.reference(),
              each.bias(),
              each.line().estimate(),
              each.line().halfWidth()));
    }
    return words
        .append(
            String.format(
                Locale.ROOT,
                "slope %.6g ± %.2g; %s (95 %%)",
                figure.slope().estimate(),
                figure.slope().halfWidth(),
                figure.zeroInBandThroughout()
                    ? "no bias is shown anywhere in the range"
                    : "a bias is shown in the range"))
        .toString();
  }
}
