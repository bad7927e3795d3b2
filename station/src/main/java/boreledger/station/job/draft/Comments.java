package boreledger.station.job.draft;

import java.util.regex.Pattern;

/** Finds comments in TOML text. */
public final class Comments {
  private static final Pattern STRINGS =
      Pattern.compile(
          "(?s)\"\"\".*?(?<!\\\\)\"\"\"|'''.*?'''|'[^'\\n]*'|#[^\\n]*"
              + "|\"[^\"\\\\\\n]*+(?:\\\\.[^\"\\\\\\n]*+)*+\"");

  private Comments() {}

  /** Whether a comment stands in a text that is TOML; a {@code #} within a string is none. */
  public static boolean in(String toml) {
    return STRINGS.matcher(toml).results().anyMatch(match -> match.group().startsWith("#"));
  }
}
