package boreledger.station.cli;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.ring.FreeExpansion;
import boreledger.calc.ring.RoundBoreHotGap;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is left of a gap when the engine runs. */
@Command(
    name = "hot-gap",
    description = "Says what is left of a ring's end gap when the engine runs.",
    footer = {
      "",
      "A free-expansion estimate in a round bore; the ring maker's smallest gap stands above it.",
      "Example: boreledger figure hot-gap --bore 96 --cold-gap 0.45 --ring-cte 12e-6",
      "  --block-cte 11e-6 --ring-temp 220 --wall-temp 130"
    })
final class HotGapFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--bore", required = true, paramLabel = "MM", description = "The bore at 20 °C.")
  private double boreMm;

  @Option(
      names = "--cold-gap",
      required = true,
      paramLabel = "MM",
      description = "The gap at 20 °C.")
  private double coldGapMm;

  @Option(
      names = "--ring-cte",
      required = true,
      paramLabel = "PER_K",
      description = "The ring's expansion coefficient per kelvin.")
  private double ringCtePerK;

  @Option(
      names = "--block-cte",
      required = true,
      paramLabel = "PER_K",
      description = "The block's expansion coefficient per kelvin.")
  private double blockCtePerK;

  @Option(
      names = "--ring-temp",
      required = true,
      paramLabel = "DEGC",
      description = "The ring's temperature when running.")
  private double ringTempC;

  @Option(
      names = "--wall-temp",
      required = true,
      paramLabel = "DEGC",
      description = "The bore's temperature when running.")
  private double wallTempC;

  /** The answer. */
  record Figure(double hotGapMm, double coldGapForZeroMm) {}

  @Override
  public Integer call() {
    coefficient("--ring-cte", ringCtePerK);
    coefficient("--block-cte", blockCtePerK);
    RoundBoreHotGap running =
        new RoundBoreHotGap(
            boreMm, new FreeExpansion(blockCtePerK, ringCtePerK), wallTempC, ringTempC);
    Figure figure = new Figure(running.hotGapMm(coldGapMm), running.coldGapForMm(0));
    answer.print(figure, words(figure));
    return ExitStatus.attentionIf(figure.hotGapMm() < 0);
  }

  /** No solid expands by a thousandth per kelvin: the bound catches a forgotten e-6. */
  private static void coefficient(String option, double ctePerK) {
    if (!(Math.abs(ctePerK) <= 1e-3)) {
      throw new ImpossibleInput(
          option + " is " + ctePerK + " per kelvin, expected something like 11.4e-6");
    }
  }

  private static String words(Figure figure) {
    String left =
        figure.hotGapMm() < 0
            ? format("The ends butt when hot, by %.4f mm: do not run it so.", -figure.hotGapMm())
            : format("%.4f mm are left when hot.", figure.hotGapMm());
    String closing =
        figure.coldGapForZeroMm() < 0
            ? "The bore outgrows the ring: even ends that touch cold would part."
            : format("A cold gap of %.4f mm would just close.", figure.coldGapForZeroMm());
    return left
        + " "
        + closing
        + " A free-expansion estimate: the ring maker's smallest gap decides.";
  }

  private static String format(String pattern, double mm) {
    return String.format(Locale.ROOT, pattern, mm);
  }
}
