package boreledger.station.bench.memory;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * A small file of keys and values beside the person's other settings. Nothing that was measured
 * stands in it: without it the window opens as on the first day. One thread uses it.
 */
public final class Memory {
  /** How many files of a kind are remembered. */
  public static final int RECENT = 8;

  private final Path file;
  private final Properties values = new Properties();

  /**
   * What is in a file; nothing when there is none, or it cannot be read.
   *
   * @param file null to remember nothing beyond this start
   */
  public Memory(Path file) {
    this.file = file;
    if (file != null && Files.isRegularFile(file)) {
      try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
        values.load(reader);
      } catch (IOException | IllegalArgumentException e) {
        // A window that opens as on the first day is better than none.
        values.clear();
      }
    }
  }

  /** The file in the person's settings folder, as the XDG Base Directory Specification has it. */
  public static Memory ofThePerson() {
    String folder = System.getenv("XDG_CONFIG_HOME");
    Path settings =
        folder == null || folder.isBlank()
            ? Path.of(System.getProperty("user.home"), ".config")
            : Path.of(folder);
    return new Memory(settings.resolve("boreledger").resolve("window.properties"));
  }

  /** What is remembered under a key; empty when nothing is. */
  public Optional<String> get(String key) {
    return Optional.ofNullable(values.getProperty(key));
  }

  /** Remembers a value under a key; null forgets it. */
  public void put(String key, String value) {
    if (value == null) {
      values.remove(key);
    } else {
      values.setProperty(key, value);
    }
  }

  /** Files used of late under a key, the last one first. */
  public List<Path> recent(String key) {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < RECENT; i++) {
      get(key + "." + i).map(Path::of).ifPresent(files::add);
    }
    return files;
  }

  /** Remembers that a file was used. */
  public void used(String key, Path used) {
    List<Path> files = recent(key);
    Path whole = used.toAbsolutePath().normalize();
    files.remove(whole);
    files.add(0, whole);
    for (int i = 0; i < RECENT; i++) {
      put(key + "." + i, i < files.size() ? files.get(i).toString() : null);
    }
  }

  /**
   * Writes the file: whole, or not at all.
   *
   * @throws IOException if it cannot be written
   */
  public void save() throws IOException {
    if (file == null) {
      return;
    }
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try (Writer writer = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
      values.store(writer, null);
    }
    Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
  }
}
