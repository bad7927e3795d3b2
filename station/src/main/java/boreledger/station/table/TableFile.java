package boreledger.station.table;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.TextFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A table file with its exact text.
 *
 * @param name its name without a folder, such as {@code gap-rules.toml}
 * @param shown how messages name it
 */
public record TableFile(String name, String shown, String text) {
  /** A table kept in a ledger. */
  public static TableFile kept(String name, String text) {
    return new TableFile(name, name, text);
  }

  /** The SHA-256 of the text's UTF-8 bytes, as 64 lower case hexadecimal digits. */
  public String sha256() {
    return ContentHash.of(text);
  }

  /** The table of a name in a folder; the program's own when the folder has none. */
  static TableFile of(String name, Path folder) throws FileProblem {
    Path path = folder.resolve(name);
    if (Files.exists(path)) {
      TextFile file = TextFile.read(path, StrictToml.MAX_BYTES);
      return new TableFile(name, path.toString(), file.text());
    }
    return own(name);
  }

  /** The table that comes with the program. */
  static TableFile own(String name) {
    try (InputStream in = TableFile.class.getResourceAsStream(name)) {
      return new TableFile(name, name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
