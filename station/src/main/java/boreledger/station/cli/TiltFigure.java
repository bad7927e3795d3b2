package boreledger.station.cli;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.ring.ClockDepth;
import boreledger.calc.ring.RingTilt;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How much too wide a gap reads because the ring is not square. */
@Command(
    name = "tilt",
    description = "Says how far a ring is from square in its bore, and what that does to its gap.",
    footer = {
      "",
      "Depths below the deck in millimetres, each at its clock position in degrees; three or more.",
      "Example: boreledger figure tilt --bore 96 --depths 15.0@0,15.4@90,15.9@180,15.5@270"
    })
final class TiltFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--bore",
      required = true,
      paramLabel = "MM",
      description = "The bore's diameter.")
  private double boreMm;

  @Option(
      names = "--depths",
      required = true,
      split = ",",
      paramLabel = "MM@DEG",
      converter = AtClock.class,
      description = "Depths, each at its clock position.")
  private List<ClockDepth> depths;

  /** The answer. */
  record Figure(double tiltDeg, double gapErrorMm, double edgeDifferenceMm) {}

  @Override
  public Integer call() {
    RingTilt tilt = RingTilt.of(boreMm, depths);
    answer.print(
        new Figure(tilt.tiltDeg(), tilt.gapErrorMm(), tilt.edgeDifferenceMm()),
        String.format(
            Locale.ROOT,
            "The ring tilts by %.3f degrees, one edge %.2f mm deeper than the other: its gap reads"
                + " %.4f mm too wide. Square the ring and read again.",
            tilt.tiltDeg(),
            tilt.edgeDifferenceMm(),
            tilt.gapErrorMm()));
    return ExitStatus.DONE;
  }

  /** Reads {@code 15.4@90}. */
  static final class AtClock implements ITypeConverter<ClockDepth> {
    @Override
    public ClockDepth convert(String text) {
      String[] parts = text.split("@", -1);
      try {
        if (parts.length == 2) {
          return new ClockDepth(Double.parseDouble(parts[1]), Double.parseDouble(parts[0]));
        }
      } catch (ImpossibleInput e) {
        throw new TypeConversionException(text + " cannot be: " + e.getMessage());
      } catch (NumberFormatException e) {
        throw new TypeConversionException(text + " is no depth at a clock position: " + EXPECTED);
      }
      throw new TypeConversionException(text + " is no depth at a clock position: " + EXPECTED);
    }

    private static final String EXPECTED = "expected something like 15.4@90";
  }
}
