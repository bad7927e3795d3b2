package boreledger.drivers.capture;

import boreledger.drivers.line.LineEvent;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Writes a capture file while its line is used. At every moment the file holds whole lines, which
 * {@link CaptureFiles} reads; each is handed to the system at once.
 */
public final class CaptureWriter implements AutoCloseable {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final Path file;
  private final Writer writer;

  private CaptureWriter(Path file, Writer writer) {
    this.file = file;
    this.writer = writer;
  }

  /**
   * Makes the file and writes its header.
   *
   * @throws java.nio.file.FileAlreadyExistsException if there is such a file: it stays as it is
   * @throws IOException if it cannot be written
   */
  public static CaptureWriter create(Path file, CaptureHeader header) throws IOException {
    Writer writer =
        Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    CaptureWriter capture = new CaptureWriter(file, writer);
    try {
      capture.line(words(header));
      return capture;
    } catch (IOException e) {
      capture.close();
      throw e;
    }
  }

  /** Goes on in a file that is there. */
  static CaptureWriter onto(Path file) throws IOException {
    return new CaptureWriter(
        file, Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.WRITE));
  }

  /** The file that is written. */
  public Path file() {
    return file;
  }

  /**
   * Writes what a line said: chunks, and that it went and came back; nothing for the rest.
   *
   * @throws IOException if it cannot be written
   */
  public void write(LineEvent event) throws IOException {
    if (event instanceof LineEvent.Chunk chunk) {
      line(timed(chunk, "rx", chunk.bytes().toHex()));
    } else if (event instanceof LineEvent.Gone gone) {
      line(timed(gone, ChunkLines.GONE, gone.why()));
    } else if (event instanceof LineEvent.Back back) {
      line(timed(back, ChunkLines.BACK, back.how()));
    }
  }

  @Override
  public void close() {
    try {
      writer.close();
    } catch (IOException e) {
      // Every line was flushed when it was written, so that nothing is left to lose here.
      return;
    }
  }

  private static Map<String, Object> words(CaptureHeader header) {
    Map<String, Object> words = new LinkedHashMap<>();
    words.put("format", HeaderLine.FORMAT);
    words.put("gauge", header.gauge());
    words.put("measure", header.measure().word());
    words.put("ring", header.ring());
    words.put("started", header.started().toString());
    words.put("setting_temp_c", header.settingTempC());
    words.put("block_temp_c", header.blockTempC());
    words.values().removeIf(Objects::isNull);
    return words;
  }

  private static Map<String, Object> timed(LineEvent event, String key, String value) {
    Map<String, Object> words = new LinkedHashMap<>();
    words.put("t", event.tS());
    words.put(key, value);
    return words;
  }

  private void line(Map<String, Object> words) throws IOException {
    writer.write(json(words));
    writer.write('\n');
    writer.flush();
  }

  private static String json(Map<String, Object> words) {
    try {
      return JSON.writeValueAsString(words);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
