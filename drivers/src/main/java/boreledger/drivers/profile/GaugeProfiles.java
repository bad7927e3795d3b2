package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.OneLine;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.TextFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds and reads gauge profiles, files that end in {@code .gauge.toml}. */
public final class GaugeProfiles {
  /** What a profile's file name ends with. */
  public static final String ENDING = ".gauge.toml";

  private GaugeProfiles() {}

  /**
   * Reads a profile file completely.
   *
   * @throws FileProblem at the first thing in it that is missing, unknown or cannot be
   */
  public static GaugeProfile read(Path path) throws FileProblem {
    TextFile file = TextFile.read(path, StrictToml.MAX_BYTES);
    return ProfileText.parse(path.toString(), file.fileName(), file.text());
  }

  /**
   * Reads a profile's text, such as one kept in the ledger.
   *
   * @param fileName its file name, without a folder
   * @throws FileProblem at the first thing in it that is missing, unknown or cannot be
   */
  public static GaugeProfile parse(String fileName, String text) throws FileProblem {
    return ProfileText.parse(fileName, fileName, text);
  }

  /** The generic profiles that come with the program. They follow open standards only. */
  public static List<GaugeProfile> builtIn() {
    return BuiltInProfiles.all();
  }

  /**
   * Finds a profile by its file name; {@code .gauge.toml} may be left out.
   *
   * @param name a file name without a folder
   * @param folders where to look first, in this order; the built-in profiles come last
   * @return the profile; empty when nothing has that name
   * @throws FileProblem if what has it cannot be read
   */
  public static Optional<GaugeProfile> lookUp(String name, List<Path> folders) throws FileProblem {
    if (!name.matches("[^/\\\\:\\p{Cc}]+")) {
      String what = "not a gauge profile's name, expected a file name without a folder";
      throw FileProblem.of(OneLine.of(name), what, null);
    }
    String fileName = withEnding(name);
    for (Path folder : folders) {
      Path path = folder.resolve(fileName);
      if (Files.exists(path)) {
        return Optional.of(read(path));
      }
    }
    return builtIn().stream()
        .filter(profile -> profile.source().fileName().equals(fileName))
        .findFirst();
  }

  /**
   * Finds a profile as {@link #lookUp} does.
   *
   * @throws FileProblem if nothing has that name, or what has it cannot be read
   */
  public static GaugeProfile find(String name, List<Path> folders) throws FileProblem {
    Optional<GaugeProfile> found = lookUp(name, folders);
    if (found.isEmpty()) {
      String what = "no such gauge profile; looked " + places(folders);
      throw FileProblem.of(withEnding(name), what, null);
    }
    return found.get();
  }

  /** Where {@link #lookUp} looks, in words. */
  public static String places(List<Path> folders) {
    String names =
        builtIn().stream().map(p -> p.source().fileName()).collect(Collectors.joining(", "));
    String first =
        folders.stream().map(folder -> "in " + folder + ", ").collect(Collectors.joining());
    return first + "among the built-in " + names;
  }

  private static String withEnding(String name) {
    return name.endsWith(ENDING) ? name : name + ENDING;
  }
}
