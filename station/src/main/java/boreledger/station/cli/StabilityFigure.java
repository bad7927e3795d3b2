package boreledger.station.cli;

import boreledger.calc.study.ControlChart;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.CsvTable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whether a gauge stays as it is. */
@Command(
    name = "stability",
    description = "Draws control limits for repeated readings of one master.",
    footer = {
      "",
      "The file is CSV with the columns subgroup, value, in order of time; every subgroup has the",
      "same number of readings, 2 to 25.",
      "Example: boreledger figure stability --file master.csv"
    })
final class StabilityFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--file", required = true, paramLabel = "FILE", description = "The readings.")
  private Path file;

  /** The answer. */
  record Figure(int subgroupSize, Chart means, Chart ranges, boolean stable) {}

  /** One chart; {@code outside} names the subgroups beyond a limit. */
  record Chart(double center, double lower, double upper, List<String> outside) {
    static Chart of(ControlChart.Track track, List<String> names) {
      return new Chart(
          track.center(),
          track.lower(),
          track.upper(),
          track.outside().stream().map(names::get).toList());
    }
  }

  private record Reading(String subgroup, double value) {}

  @Override
  public Integer call() throws FileProblem {
    Map<String, List<Double>> subgroups = new LinkedHashMap<>();
    for (Reading reading :
        CsvTable.read(
            file,
            List.of("subgroup", "value"),
            row -> new Reading(row.text("subgroup"), row.number("value")))) {
      subgroups
          .computeIfAbsent(reading.subgroup(), fresh -> new ArrayList<>())
          .add(reading.value());
    }
    ControlChart chart = ControlChart.of(List.copyOf(subgroups.values()));
    List<String> names = List.copyOf(subgroups.keySet());
    Figure figure =
        new Figure(
            chart.subgroupSize(),
            Chart.of(chart.means(), names),
            Chart.of(chart.ranges(), names),
            chart.stable());
    answer.print(
        figure,
        words("means", figure.means()) + System.lineSeparator() + words("ranges", figure.ranges()));
    return ExitStatus.attentionIf(!figure.stable());
  }

  private static String words(String name, Chart chart) {
    return String.format(
        Locale.ROOT,
        "%s: center %.6f, limits %.6f to %.6f; %s",
        name,
        chart.center(),
        chart.lower(),
        chart.upper(),
        chart.outside().isEmpty()
            ? "none outside"
            : "outside: " + String.join(", ", chart.outside()));
  }
}
