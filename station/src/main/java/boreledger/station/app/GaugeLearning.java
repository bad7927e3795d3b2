package boreledger.station.app;

import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.learn.GaugeLearner;
import boreledger.drivers.learn.Learned;
import boreledger.drivers.learn.PortLearner;
import boreledger.drivers.learn.PortPrompt;
import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.serial.SerialLine;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/**
 * What was learned of a gauge that showed known values.
 *
 * @param certain whether exactly one reading of its bytes fits
 * @param profile the profile file written; null when not certain
 * @param candidates the readings that fit
 * @param why why it is certain or not, in one sentence
 * @param showNextMm the value that would tell most; null when certain
 * @param showNext the same in words; null when certain
 */
public record GaugeLearning(
    boolean certain,
    String profile,
    List<Reading> candidates,
    String why,
    BigDecimal showNextMm,
    String showNext) {
  /** How long a press is waited for before a setting is given up. */
  static final Duration PATIENCE = Duration.ofSeconds(30);

  /** Takes a copy of the list. */
  public GaugeLearning {
    candidates = List.copyOf(candidates);
  }

  /**
   * A reading that fits.
   *
   * @param words what it is, for a person
   * @param profile the text of its profile
   */
  public record Reading(String words, String profile) {}

  /**
   * Learns from a capture and writes the profile when certain.
   *
   * @param shows the values shown, in their order, separated by commas
   * @param unit the unit of values that name none
   * @param out the profile file to write; there must be none yet
   */
  public static GaugeLearning fromCapture(Path capture, String shows, LengthUnit unit, Path out)
      throws FileProblem, UsageProblem {
    refuseIfThere(out);
    List<ShownValue> shown = ShownValues.read(shows, unit);
    return of(
        GaugeLearner.learn(CaptureFiles.read(capture).chunks(), shown, Optional.empty()), out);
  }

  /**
   * Learns at a port, with a person who sets the gauge and presses its button as the prompt says,
   * and writes the profile when certain.
   */
  public static GaugeLearning fromPort(
      String port, String shows, LengthUnit unit, Path out, PortPrompt prompt)
      throws UsageProblem, LineFault {
    refuseIfThere(out);
    List<ShownValue> shown = ShownValues.read(shows, unit);
    DoubleSupplier clockS = LineClock.fromNow();
    PortLearner learner =
        new PortLearner(
            settings -> SerialLine.open(port, settings, clockS), prompt, shown, PATIENCE);
    return of(learner.learn(), out);
  }

  private static GaugeLearning of(Learned learned, Path out) throws UsageProblem {
    if (learned.certain()) {
      write(learned.candidates().get(0).profile(), out);
    }
    boolean asks = learned.next() != null;
    return new GaugeLearning(
        learned.certain(),
        learned.certain() ? out.toString() : null,
        learned.candidates().stream().map(c -> new Reading(c.words(), c.profile())).toList(),
        learned.why(),
        asks ? learned.next().mm() : null,
        asks ? learned.next().words() : null);
  }

  private static void refuseIfThere(Path out) throws UsageProblem {
    if (Files.exists(out)) {
      throw alreadyThere(out);
    }
  }

  private static void write(String profile, Path out) throws UsageProblem {
    try {
      new LearnedProfile(profile).write(out);
    } catch (FileAlreadyExistsException e) {
      throw alreadyThere(out);
    } catch (IOException | FileProblem e) {
      throw new UsageProblem(
          out + ": could not be written; give --out a file in a folder that can be written to");
    }
  }

  private static UsageProblem alreadyThere(Path out) {
    return new UsageProblem(
        out + ": there is such a file already; give --out another name, or move it away");
  }
}
