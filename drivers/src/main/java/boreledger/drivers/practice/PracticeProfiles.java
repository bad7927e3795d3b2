package boreledger.drivers.practice;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The profiles of the practice gauges, which lie beside this class. */
public final class PracticeProfiles {
  private PracticeProfiles() {}

  /** The bore gauge that streams deviations and is rocked. */
  public static GaugeProfile bore() {
    return load("practice-bore.gauge.toml");
  }

  /** The gauge that types sizes, one for each press. */
  public static GaugeProfile size() {
    return load("practice-size.gauge.toml");
  }

  private static GaugeProfile load(String fileName) {
    try (InputStream in = PracticeProfiles.class.getResourceAsStream(fileName)) {
      return GaugeProfiles.parse(fileName, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }
}
