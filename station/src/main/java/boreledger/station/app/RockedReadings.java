package boreledger.station.app;

import boreledger.calc.rock.RockEstimator;
import boreledger.calc.rock.RockSample;
import boreledger.drivers.capture.Capture;
import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.GaugeProfile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The readings in a rocked stream. The profile's own pick rule does not matter here: the stream is
 * taken as rocked, with the rule's defaults unless the profile gives its own.
 *
 * @param readings those that were found
 * @param notEnough attempts that gave none
 */
public record RockedReadings(List<Reading> readings, List<NotEnough> notEnough) {
  /** Takes copies of the lists. */
  public RockedReadings {
    readings = List.copyOf(readings);
    notEnough = List.copyOf(notEnough);
  }

  /**
   * A reading.
   *
   * @param t when, in seconds since the capture's start
   * @param valueMm the gauge's own value square to the bore
   * @param rocks how many times the gauge passed through square
   * @param smallestMm the smallest value of the stream, which noise and glitches pull down
   */
  public record Reading(
      double t, double valueMm, double standardUncertaintyMm, int rocks, double smallestMm) {}

  /** An attempt that gave no reading, and why. */
  public record NotEnough(double t, String why) {}

  /** Finds the readings of a capture file. */
  public static RockedReadings of(Path gaugeFile, Path captureFile) throws FileProblem {
    GaugeProfile profile = GaugeFiles.named(gaugeFile).rocked();
    Capture capture = CaptureFiles.read(captureFile);
    Gauge gauge = new Gauge(profile, null);
    List<Reading> readings = new ArrayList<>();
    List<NotEnough> notEnough = new ArrayList<>();
    for (LineEvent event : capture.events()) {
      for (GaugeEvent said : gauge.feed(event)) {
        if (said instanceof GaugeEvent.Picks picks) {
          sort(profile, picks.pick(), readings, notEnough);
        }
      }
    }
    return new RockedReadings(readings, notEnough);
  }

  private static void sort(
      GaugeProfile profile, PickEvent pick, List<Reading> readings, List<NotEnough> notEnough) {
    if (pick instanceof PickEvent.NotPicked none) {
      notEnough.add(new NotEnough(none.tS(), none.why()));
    } else if (pick instanceof PickEvent.Picked picked) {
      readings.add(
          new Reading(
              picked.tS(),
              picked.valueMm(),
              picked.standardUncertaintyMm(),
              rocks(profile, picked),
              picked.samples().stream().mapToDouble(Sample::valueMm).min().orElseThrow()));
    }
  }

  private static int rocks(GaugeProfile profile, PickEvent.Picked picked) {
    List<RockSample> samples =
        picked.samples().stream().map(each -> new RockSample(each.tS(), each.valueMm())).toList();
    return RockEstimator.estimate(samples, profile.resolutionMm(), 1).rocks();
  }
}
