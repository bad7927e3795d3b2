package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.GaugeCheck;
import boreledger.station.app.GaugeCheck.RejectedFrame;
import boreledger.station.app.GaugeCheck.SampleFrame;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Whether a profile understands a gauge. */
@Command(
    name = "check",
    description = "Shows what a gauge profile makes of every frame of a capture.",
    footer = {
      "",
      "Values are the gauge's own, in millimetres.",
      "Example: boreledger gauge check --gauge my.gauge.toml --capture my.capture.jsonl"
    })
final class GaugeCheckCommand implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private RecordedGauge recorded;

  @Override
  public Integer call() throws FileProblem {
    GaugeCheck check = GaugeCheck.of(recorded.gauge(), recorded.capture());
    answer.print(check, words(check));
    return ExitStatus.attentionIf(!check.rejected().isEmpty());
  }

  private static String words(GaugeCheck check) {
    StringBuilder words = new StringBuilder();
    for (SampleFrame sample : check.samples()) {
      words.append(line("%10.3f s  %+.6f mm", sample.t(), sample.valueMm()));
    }
    for (RejectedFrame rejected : check.rejected()) {
      words.append(line("%10.3f s  rejected %s: %s", rejected.t(), rejected.raw(), rejected.why()));
    }
    words.append(
        line(
            "%d frames: %d samples, %d rejected",
            check.frames(), check.samples().size(), check.rejected().size()));
    return words.toString();
  }

  private static String line(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values) + System.lineSeparator();
  }
}
