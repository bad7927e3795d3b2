package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.RockedReadings;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The readings in a rocked stream. */
@Command(
    name = "rock",
    description = "Finds the readings in the stream of a gauge that was rocked through square.",
    footer = {
      "",
      "Values are the gauge's own, in millimetres. Common practice: rock until the smallest value",
      "repeats.",
      "Example: boreledger figure rock --gauge my.gauge.toml --capture my.capture.jsonl"
    })
final class RockFigure implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private RecordedGauge recorded;

  @Override
  public Integer call() throws FileProblem {
    RockedReadings found = RockedReadings.of(recorded.gauge(), recorded.capture());
    answer.print(found, words(found));
    return ExitStatus.attentionIf(!found.notEnough().isEmpty() || found.readings().isEmpty());
  }

  private static String words(RockedReadings found) {
    String readings =
        found.readings().stream()
            .map(
                each ->
                    String.format(
                        Locale.ROOT,
                        "%10.3f s  %+.5f mm, standard uncertainty %.5f mm, %d rocks; smallest value"
                            + " %+.5f mm",
                        each.t(),
                        each.valueMm(),
                        each.standardUncertaintyMm(),
                        each.rocks(),
                        each.smallestMm()))
            .collect(Collectors.joining(System.lineSeparator()));
    List<String> rest =
        found.notEnough().stream()
            .map(each -> String.format(Locale.ROOT, "%10.3f s  %s", each.t(), each.why()))
            .toList();
    return readings + System.lineSeparator() + String.join(System.lineSeparator(), rest);
  }
}
