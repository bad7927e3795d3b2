package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.TextFile;
import boreledger.drivers.line.LineEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads capture files: a header line, then one line for each chunk. */
public final class CaptureFiles {
  /** The largest file that is read. */
  public static final int MAX_BYTES = 256 << 20;

  private CaptureFiles() {}

  /**
   * Reads a capture completely.
   *
   * @throws FileProblem at the first line that is no part of a capture
   */
  public static Capture read(Path path) throws FileProblem {
    TextFile file = TextFile.read(path, MAX_BYTES);
    List<String> lines = file.text().lines().toList();
    if (lines.isEmpty()) {
      throw FileProblem.at(path.toString(), 1, "empty, expected a capture's header");
    }
    CaptureHeader header = HeaderLine.read(new JsonLine(path.toString(), 1, lines.get(0)));
    List<LineEvent.Chunk> chunks = new ArrayList<>();
    double lastTS = 0;
    for (int i = 1; i < lines.size(); i++) {
      LineEvent.Chunk chunk =
          ChunkLine.read(new JsonLine(path.toString(), i + 1, lines.get(i)), lastTS);
      chunks.add(chunk);
      lastTS = chunk.tS();
    }
    return new Capture(file.fileName(), header, chunks);
  }
}
