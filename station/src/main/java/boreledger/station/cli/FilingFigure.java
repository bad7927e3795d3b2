package boreledger.station.cli;

import boreledger.calc.filing.Filing;
import boreledger.calc.filing.FilingAdvice;
import boreledger.calc.filing.FilingGoal;
import boreledger.calc.filing.FilingPass;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The next pass with the file. */
@Command(
    name = "filing",
    description = "Advises the next pass with the file, and when to stop.",
    footer = {
      "",
      "Each pass as turns:gap before:gap after, in millimetres. File one side only, from the",
      "outside face inward, the ring out of the bore and its ends supported; wipe the dust off",
      "before every reading, no chamfer, and stop and measure often (common practice).",
      "Example: boreledger figure filing --gap 0.43 --uncertainty 0.005 --target 0.52 --max 0.60",
      "  --pass 10:0.40:0.415 --pass 10:0.415:0.43"
    })
final class FilingFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--gap", required = true, paramLabel = "MM", description = "The gap now.")
  private double gapMm;

  @Option(
      names = "--uncertainty",
      required = true,
      paramLabel = "MM",
      description = "The standard uncertainty of a gap reading.")
  private double readingUncertaintyMm;

  @Option(names = "--target", required = true, paramLabel = "MM", description = "The gap wanted.")
  private double targetMm;

  @Option(names = "--max", paramLabel = "MM", description = "The largest gap allowed.")
  private Double largestMm;

  @Option(
      names = "--pass",
      paramLabel = "N:MM:MM",
      converter = AsPass.class,
      description = "A pass already filed; may be given several times.")
  private List<FilingPass> passes = List.of();

  /**
   * The answer.
   *
   * @param advice in one word, such as {@code next-pass} or {@code ready}
   * @param turns what to file next; null when nothing is to be filed
   * @param chanceOfPassing the chance that they pass the limit; null when it cannot be told
   */
  record Figure(
      String advice,
      double remainderMm,
      Integer turns,
      Double expectedGapMm,
      Double removalPerTurnMm,
      Double chanceOfPassing) {}

  @Override
  public Integer call() {
    Estimate gap =
        new Estimate(gapMm, Budget.of(Component.typeB("gap reading", readingUncertaintyMm)));
    FilingAdvice advice =
        new Filing(gap, readingUncertaintyMm, passes, FilingGoal.of(targetMm, largestMm)).next();
    Figure figure = figure(advice);
    answer.print(figure, words(figure));
    return ExitStatus.attentionIf(
        !(advice instanceof FilingAdvice.Ready) && figure.turns() == null);
  }

  private Figure figure(FilingAdvice advice) {
    if (advice instanceof FilingAdvice.NextPass next) {
      return figure(
          "next-pass",
          next.turns(),
          next.expectedGapMm(),
          next.rate().perTurnMm(),
          next.chanceOfPassing());
    } else if (advice instanceof FilingAdvice.HalfTheRemainder half) {
      return figure(
          "half-the-remainder", half.turns(), half.expectedGapMm(), half.removalPerTurnMm(), null);
    } else if (advice instanceof FilingAdvice.OneTurnTooMuch one) {
      return figure("one-turn-too-much", null, null, one.removalPerTurnMm(), one.chanceOfPassing());
    } else if (advice instanceof FilingAdvice.NothingRemoved nothing) {
      return figure("nothing-removed", null, null, nothing.removalPerTurnMm(), null);
    } else if (advice instanceof FilingAdvice.FileALittleAndMeasure) {
      return figure("file-a-little-and-measure", 1, null, null, null);
    }
    return figure(
        advice instanceof FilingAdvice.Ready ? "ready" : "too-wide", null, null, null, null);
  }

  private Figure figure(
      String advice, Integer turns, Double expectedMm, Double perTurnMm, Double chance) {
    return new Figure(advice, targetMm - gapMm, turns, expectedMm, perTurnMm, chance);
  }

  private static String words(Figure figure) {
    return switch (figure.advice()) {
      case "next-pass" ->
          String.format(
              Locale.ROOT,
              "File %d turns, then measure: %.4f mm expected, %.2f %% chance of passing the limit.",
              figure.turns(),
              figure.expectedGapMm(),
              100 * figure.chanceOfPassing());
      case "half-the-remainder" ->
          String.format(
              Locale.ROOT,
              "File %d turns, at most half of what is left, then measure: %.4f mm expected.",
              figure.turns(),
              figure.expectedGapMm());
      case "one-turn-too-much" ->
          "Even one turn may be too much: take a finer cut, or read the gap better, before going on.";
      case "nothing-removed" ->
          "The passes opened the gap by nothing: look at the readings, the ring and the file.";
      case "file-a-little-and-measure" ->
          "File a little and measure: nothing is known yet about what a turn takes off.";
      case "ready" -> "Stop: what is left is within the gap's uncertainty.";
      default -> "Too wide: the gap is above the largest allowed, and cannot be filed smaller.";
    };
  }

  /** Reads {@code 10:0.40:0.415}. */
  static final class AsPass implements ITypeConverter<FilingPass> {
    @Override
    public FilingPass convert(String text) {
      String[] parts = text.split(":", -1);
      try {
        if (parts.length == 3) {
          return new FilingPass(
              Integer.parseInt(parts[0]),
              Double.parseDouble(parts[1]),
              Double.parseDouble(parts[2]));
        }
      } catch (NumberFormatException e) {
        throw new TypeConversionException(text + EXPECTED);
      }
      throw new TypeConversionException(text + EXPECTED);
    }

    private static final String EXPECTED =
        " is no pass: expected turns:gap before:gap after, such as 10:0.40:0.415";
  }
}
