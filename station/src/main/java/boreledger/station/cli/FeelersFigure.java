package boreledger.station.cli;

import boreledger.calc.feeler.LeafSet;
import boreledger.calc.feeler.LeafStack;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which feeler leaves make a gap. */
@Command(
    name = "feelers",
    description = "Says which leaves of a feeler set make a gap, nearest first.",
    footer = {
      "",
      "Each leaf is used once; a thickness given twice is two leaves.",
      "Example: boreledger figure feelers --gap 0.52 --leaves 0.05,0.10,0.20,0.30 --most 3"
    })
final class FeelersFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--gap", required = true, paramLabel = "MM", description = "The gap to make.")
  private double gapMm;

  @Option(
      names = "--leaves",
      required = true,
      split = ",",
      paramLabel = "MM",
      description = "The leaves of the set.")
  private List<Double> leavesMm;

  @Option(
      names = "--most",
      paramLabel = "N",
      defaultValue = "3",
      description = "The most leaves to a stack; ${DEFAULT-VALUE} otherwise.")
  private int most;

  /** The answer. */
  record Figure(List<LeafStack> stacks) {}

  @Override
  public Integer call() {
    List<LeafStack> stacks = new LeafSet(leavesMm).stacksFor(gapMm, most);
    answer.print(
        new Figure(stacks),
        stacks.stream().map(FeelersFigure::words).collect(Collectors.joining("\n")));
    return ExitStatus.DONE;
  }

  private static String words(LeafStack stack) {
    String leaves =
        stack.leavesMm().stream().map(Object::toString).collect(Collectors.joining(" + "));
    return String.format(
        Locale.ROOT, "%s = %.3f mm, off by %+.3f mm", leaves, stack.totalMm(), stack.offMm());
  }
}
