package boreledger.station.bench.start;

import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.nio.file.Path;
import java.util.List;

/**
 * A gauge profile to choose.
 *
 * @param gauge as the program takes it: a file, or a built-in profile's name
 * @param words what a person calls it
 */
public record ProfileChoice(Path gauge, String words) {
  /** The profiles that come with the program. */
  static List<ProfileChoice> builtIn() {
    return GaugeProfiles.builtIn().stream().map(ProfileChoice::of).toList();
  }

  /** A profile in a file of the person's own. */
  static ProfileChoice file(Path file) {
    return new ProfileChoice(file, file.getFileName().toString());
  }

  private static ProfileChoice of(GaugeProfile profile) {
    return new ProfileChoice(Path.of(profile.source().fileName()), profile.name());
  }

  @Override
  public String toString() {
    return words;
  }
}
