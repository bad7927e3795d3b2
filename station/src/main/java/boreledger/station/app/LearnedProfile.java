package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.Reads;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a profile that was learned, before it becomes a file.
 *
 * @param text as a person reads it
 */
public record LearnedProfile(String text) {
  /** The same with the name that a person gives the gauge; marks that TOML keeps are left out. */
  public LearnedProfile named(String name) {
    return with("name", "\"" + name.strip().replaceAll("[\\p{Cntrl}\"\\\\]", "") + "\"");
  }

  /** The same, saying what the gauge reads. */
  public LearnedProfile reading(Reads reads) {
    return with("reads", "\"" + reads.name().toLowerCase(Locale.ROOT) + "\"");
  }

  /** The same with the maximum permissible error of its certificate. */
  public LearnedProfile withMaxError(BigDecimal mm) {
    return with("max_error_mm", mm.toPlainString());
  }

  /**
   * Writes it whole, or not at all.
   *
   * @throws FileAlreadyExistsException if there is such a file; it is left alone
   * @throws FileProblem if the profile could not be read back
   */
  public void write(Path file) throws IOException, FileProblem {
    GaugeProfiles.parse(file.toString(), text);
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString());
    }
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try {
      Files.writeString(fresh, text, StandardCharsets.UTF_8);
      Files.move(fresh, file);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private LearnedProfile with(String key, String value) {
    Matcher line = Pattern.compile("(?m)^" + key + " = .*$").matcher(text);
    return new LearnedProfile(line.replaceFirst(Matcher.quoteReplacement(key + " = " + value)));
  }
}
