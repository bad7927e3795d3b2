package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.TextFile;
import boreledger.drivers.line.LineEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads capture files, {@code *.capture.jsonl}: a header line, then one JSON object per chunk.
 *
 * <pre>{@code
 * {"format":"boreledger-capture/1","gauge":"signed.gauge.toml","measure":"bore",
 *  "started":"2031-05-06T08:00:00Z","setting_temp_c":20.4,"block_temp_c":21.3}   (one line)
 * {"t":0.000,"rx":"2b302e3031320d0a"}
 * }</pre>
 *
 * <p>A line that went away and came back has {@code gone} and {@code back} with a text in place of
 * {@code rx}. A {@code comment} key is allowed on any line, and may be alone on one.
 */
public final class CaptureFiles {
  /** What a capture's file name ends with. */
  public static final String ENDING = ".capture.jsonl";

  /** The largest file that is read. */
  public static final int MAX_BYTES = 1 << 26;

  private CaptureFiles() {}

  /**
   * Reads a capture file completely.
   *
   * @throws FileProblem at the first line that cannot be understood
   */
  public static Capture read(Path path) throws FileProblem {
    TextFile file = TextFile.read(path, MAX_BYTES);
    return parse(path.toString(), file.fileName(), file.text());
  }

  private static Capture parse(String shownAs, String fileName, String text) throws FileProblem {
    String content = text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (content.isBlank()) {
      throw FileProblem.at(shownAs, 1, "empty file, expected a capture's header");
    }
    List<String> lines = content.lines().toList();
    boolean cut = !content.endsWith("\n");
    CaptureHeader header = null;
    ChunkLines chunkLines = new ChunkLines();
    List<LineEvent> said = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      boolean cutHere = cut && i == lines.size() - 1;
      JsonLine line = JsonLine.parse(shownAs, i + 1, lines.get(i), cutHere);
      if (header == null) {
        header = HeaderLine.read(line);
      } else {
        chunkLines.read(line).ifPresent(said::add);
      }
    }
    return new Capture(fileName, header, said);
  }
}
