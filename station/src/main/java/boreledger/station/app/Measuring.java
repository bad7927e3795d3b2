package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.Reads;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import java.util.stream.Collectors;

/** Checks that a gauge, a measure and a ring go together. */
final class Measuring {
  private Measuring() {}

  /**
   * The ring that is to be gauged; null for bores.
   *
   * @param asker what the message begins with, such as a file and line
   * @throws UsageProblem if a ring is needed and not there, or the gauge reads deviations where
   *     sizes are needed
   */
  static Ring ring(Job job, GaugeProfile gauge, Measure measure, String name, String asker)
      throws UsageProblem {
    if (measure == Measure.BORE) {
      if (name != null) {
        throw new UsageProblem(asker + ": the measure bore goes without a ring");
      }
      return null;
    }
    if (gauge.reads() != Reads.SIZE) {
      throw new UsageProblem(
          asker
              + ": the measure "
              + measure.word()
              + " needs a gauge that reads = \"size\", "
              + gauge.source().fileName()
              + " reads deviations");
    }
    if (name == null) {
      throw new UsageProblem(
          asker + ": the measure " + measure.word() + " needs a ring, one of " + rings(job));
    }
    return job.ring(name)
        .orElseThrow(
            () ->
                new UsageProblem(
                    asker + ": the job has no ring named " + name + ", it has " + rings(job)));
  }

  private static String rings(Job job) {
    return job.rings().isEmpty()
        ? "none"
        : job.rings().stream().map(Ring::name).collect(Collectors.joining(", "));
  }
}
