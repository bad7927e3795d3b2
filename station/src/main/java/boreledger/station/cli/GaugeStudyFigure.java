package boreledger.station.cli;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.study.AnovaStudy;
import boreledger.calc.study.AverageRangeStudy;
import boreledger.calc.study.CrossedStudy;
import boreledger.calc.study.GaugeVariation;
import boreledger.calc.study.StudyReading;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.CsvTable;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A gauge study. */
@Command(
    name = "gauge-study",
    description = "Works out repeatability and reproducibility from a crossed gauge study.",
    footer = {
      "",
      "The file is CSV with the columns part, appraiser, trial, value. Answers are standard",
      "deviations, by analysis of variance (interaction pooled at p > 0.25) and by average and",
      "range (AIAG MSA, 4th edition).",
      "Example: boreledger figure gauge-study --file study.csv --tolerance 0.05"
    })
final class GaugeStudyFigure implements Callable<Integer> {
  private static final List<String> COLUMNS = List.of("part", "appraiser", "trial", "value");

  @Mixin private Answer answer;

  @Option(names = "--file", required = true, paramLabel = "FILE", description = "The study.")
  private Path file;

  @Option(
      names = "--tolerance",
      paramLabel = "T",
      description = "Upper minus lower limit, in the readings' unit.")
  private Double tolerance;

  /** The answer. */
  record Figure(Method anova, Method averageRange) {}

  /** One method's standard deviations; null for what it cannot tell. */
  record Method(
      double ev,
      double av,
      Double interaction,
      double grr,
      double pv,
      double tv,
      Double percentGrr,
      Double percentOfTolerance,
      Double ndc,
      Integer categories) {}

  @Override
  public Integer call() throws FileProblem {
    CrossedStudy study = study();
    Figure figure =
        new Figure(
            method(AnovaStudy.of(study).variation()),
            method(AverageRangeStudy.of(study).variation()));
    answer.print(
        figure,
        words("analysis of variance", figure.anova())
            + System.lineSeparator()
            + words("average and range", figure.averageRange()));
    return ExitStatus.DONE;
  }

  private CrossedStudy study() throws FileProblem {
    List<StudyReading> readings =
        CsvTable.read(
            file,
            COLUMNS,
            row ->
                new StudyReading(
                    row.text("part"),
                    row.text("appraiser"),
                    row.text("trial"),
                    row.number("value")));
    try {
      return new CrossedStudy(readings);
    } catch (ImpossibleInput e) {
      throw FileProblem.of(file.toString(), e.getMessage(), e);
    }
  }

  private Method method(GaugeVariation variation) {
    return new Method(
        variation.ev(),
        variation.av(),
        variation.interaction(),
        variation.grr(),
        variation.pv(),
        variation.tv(),
        orNull(variation.percentGrr()),
        tolerance == null ? null : variation.percentOfTolerance(tolerance),
        orNull(variation.ndc()),
        variation.categories().isPresent() ? variation.categories().getAsInt() : null);
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }

  private static String words(String name, Method method) {
    return String.format(
        Locale.ROOT,
        "By %s: EV %.6f, AV %.6f, GRR %.6f, PV %.6f, TV %.6f; GRR is %s of the study%s; %s distinct"
            + " categories (5 or more are wanted).",
        name,
        method.ev(),
        method.av(),
        method.grr(),
        method.pv(),
        method.tv(),
        percent(method.percentGrr()),
        method.percentOfTolerance() == null
            ? ""
            : " and " + percent(method.percentOfTolerance()) + " of the tolerance",
        method.categories() == null ? "no" : method.categories());
  }

  private static String percent(Double value) {
    return value == null ? "nothing" : String.format(Locale.ROOT, "%.1f %%", value);
  }
}
