package boreledger.station.app;

import boreledger.drivers.capture.Capture;
import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.LineEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What a gauge profile makes of a capture, frame by frame. The capture's own word for its gauge
 * does not matter here.
 *
 * @param frames how many frames and pieces of damage there were
 * @param samples those that decoded
 * @param rejected those that did not
 */
public record GaugeCheck(int frames, List<SampleFrame> samples, List<RejectedFrame> rejected) {
  /** Takes copies of the lists. */
  public GaugeCheck {
    samples = List.copyOf(samples);
    rejected = List.copyOf(rejected);
  }

  /**
   * A frame that decoded.
   *
   * @param t seconds since the capture's start
   * @param valueMm the gauge's own value
   */
  public record SampleFrame(double t, double valueMm) {}

  /**
   * A frame that did not decode.
   *
   * @param raw its bytes in hexadecimal
   */
  public record RejectedFrame(double t, String raw, String why) {}

  /** Checks a profile against a capture file. */
  public static GaugeCheck of(Path gaugeFile, Path captureFile) throws FileProblem {
    Gauge gauge = new Gauge(GaugeFiles.named(gaugeFile), null);
    Capture capture = CaptureFiles.read(captureFile);
    List<SampleFrame> samples = new ArrayList<>();
    List<RejectedFrame> rejected = new ArrayList<>();
    for (LineEvent event : capture.events()) {
      for (GaugeEvent said : gauge.feed(event)) {
        if (said instanceof GaugeEvent.Live live) {
          samples.add(new SampleFrame(live.sample().tS(), live.sample().valueMm()));
        } else if (said instanceof GaugeEvent.Bad bad) {
          rejected.add(
              new RejectedFrame(
                  bad.rejected().tS(), bad.rejected().raw().toHex(), bad.rejected().why()));
        }
      }
    }
    return new GaugeCheck(samples.size() + rejected.size(), samples, rejected);
  }
}
