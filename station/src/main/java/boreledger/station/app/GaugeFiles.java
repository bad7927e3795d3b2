package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Gauge profiles as people name them. */
final class GaugeFiles {
  private GaugeFiles() {}

  /** The profile in a file, or the built-in one of a name. */
  static GaugeProfile named(Path gauge) throws FileProblem {
    if (Files.exists(gauge) || gauge.getNameCount() > 1) {
      return GaugeProfiles.read(gauge);
    }
    return GaugeProfiles.find(gauge.toString(), List.of());
  }
}
