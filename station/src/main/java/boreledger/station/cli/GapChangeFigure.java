package boreledger.station.cli;

import boreledger.calc.bore.SectionShape;
import boreledger.calc.input.ImpossibleInput;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How a ring's gap changes from one place in a bore to another. */
@Command(
    name = "gap-change",
    description = "Says how a ring's end gap changes when the ring is moved along a bore.",
    footer = {
      "",
      "Diameters in millimetres, one for each axis, evenly spaced around the bore.",
      "Example: boreledger figure gap-change --from 96.061,96.047 --to 96.020,96.012"
    })
final class GapChangeFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--from",
      required = true,
      split = ",",
      paramLabel = "MM",
      description = "Diameters where the ring is.")
  private List<Double> fromMm;

  @Option(
      names = "--to",
      required = true,
      split = ",",
      paramLabel = "MM",
      description = "Diameters where it goes.")
  private List<Double> toMm;

  /** The answer. */
  record Figure(double fromPerimeterMm, double toPerimeterMm, double gapChangeMm) {}

  @Override
  public Integer call() {
    if (fromMm.size() != toMm.size()) {
      throw new ImpossibleInput(
          String.format(
              Locale.ROOT,
              "--from has %d diameters and --to has %d, expected one for each axis in both",
              fromMm.size(),
              toMm.size()));
    }
    double fromPerimeterMm = SectionShape.through(fromMm).perimeterMm();
    double toPerimeterMm = SectionShape.through(toMm).perimeterMm();
    double changeMm = toPerimeterMm - fromPerimeterMm;
    answer.print(
        new Figure(fromPerimeterMm, toPerimeterMm, changeMm),
        String.format(
            Locale.ROOT,
            "The perimeter goes from %.4f mm to %.4f mm: the gap %s by %.4f mm.",
            fromPerimeterMm,
            toPerimeterMm,
            changeMm < 0 ? "closes" : "opens",
            Math.abs(changeMm)));
    return ExitStatus.DONE;
  }
}
