package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The profiles that lie beside this class as resources. */
final class BuiltInProfiles {
  private static final List<String> FILE_NAMES =
      List.of(
          "ascii-line-deviation.gauge.toml",
          "ascii-line-size.gauge.toml",
          "ieee-488-2-size.gauge.toml",
          "keyboard-line-size.gauge.toml",
          "modbus-rtu-size.gauge.toml");

  private BuiltInProfiles() {}

  static List<GaugeProfile> all() {
    return FILE_NAMES.stream().map(BuiltInProfiles::load).toList();
  }

  private static GaugeProfile load(String fileName) {
    try (InputStream in = BuiltInProfiles.class.getResourceAsStream(fileName)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return GaugeProfiles.parse(fileName, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }
}
