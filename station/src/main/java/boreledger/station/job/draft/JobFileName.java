package boreledger.station.job.draft;

import java.util.Locale;
import java.util.regex.Pattern;

/** The file name that suits a job's name, such as {@code pumphouse-three.job.toml}. */
public final class JobFileName {
  private static final String ENDING = ".job.toml";
  private static final int LONGEST = 60;
  private static final Pattern RESERVED = Pattern.compile("con|prn|aux|nul|com\\d|lpt\\d");

  private JobFileName() {}

  /** The name of a file that every system takes. */
  public static String of(String jobName) {
    String words =
        jobName
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    String name =
        words.substring(
            0,
            words.offsetByCodePoints(
                0, Math.min(words.codePointCount(0, words.length()), LONGEST)));
    if (name.isEmpty()) {
      return "new" + ENDING;
    }
    return (RESERVED.matcher(name).matches() ? "job-" + name : name) + ENDING;
  }
}
