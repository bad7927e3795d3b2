package boreledger.drivers.file;

import java.nio.file.Path;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseOptions;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/**
 * Reads TOML files that people write, refusing whatever is not understood.
 *
 * <pre>{@code
 * Table file = StrictToml.read(path);
 * double boreMm = file.required("bore_mm").positive();
 * file.done();
 * }</pre>
 */
public final class StrictToml {
  /** The largest file that is read. */
  public static final int MAX_BYTES = 1 << 20;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private StrictToml() {}

  /**
   * Reads a file. Reading values out of the table and {@link Table#done()} complete the check.
   *
   * @throws FileProblem if the file cannot be read, is too large, not UTF-8 or not TOML
   */
  public static Table read(Path path) throws FileProblem {
    TextFile file = TextFile.read(path, MAX_BYTES);
    return parse(path.toString(), file.text());
  }

  /**
   * Reads text, such as that of a file kept in the ledger.
   *
   * @param file what messages call the text
   * @throws FileProblem if it is not TOML, at the first error
   */
  public static Table parse(String file, String text) throws FileProblem {
    // Some editors put a byte order mark in front; TOML has no word for it.
    String content = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    // With its source kept, the parser trips over its own assertions in some broken headers.
    TomlParseResult result = Toml.parse(content, TomlParseOptions.sourceless());
    if (result.hasErrors()) {
      TomlParseError error = result.errors().get(0);
      TomlPosition at = error.position();
      throw FileProblem.at(file, at.line(), at.column(), "not TOML: " + firstLine(error));
    }
    return new Table(file, "", result, TomlPosition.positionAt(1, 1));
  }

  private static String firstLine(TomlParseError error) {
    return error.getMessage().replaceAll("\\p{Cntrl}+", " ");
  }
}
