package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import java.util.List;
import java.util.Locale;

/**
 * One way of cutting what was heard into frames.
 *
 * @param startsWith bytes that every frame begins with, as a profile will say; may be empty
 * @param endsWith bytes that every frame ends with, as a profile will say; may be empty
 * @param quietMs the pause that ends a frame in milliseconds; 0 when the line never paused
 * @param frames the whole frames, marks included
 */
record Cut(Kind kind, Bytes startsWith, Bytes endsWith, double quietMs, List<Bytes> frames) {
  private static final int LEAST_MAX_BYTES = 64;

  enum Kind {
    LINE,
    BLOCK,
    MODBUS
  }

  Cut {
    frames = List.copyOf(frames);
  }

  /** The same frames, with other marks. */
  Cut marked(Bytes start, Bytes end) {
    return new Cut(kind, start, end, quietMs, frames);
  }

  /** A frame without its marks. */
  Bytes payload(Bytes frame) {
    return frame.slice(startsWith.size(), frame.size() - endsWith.size());
  }

  /** The length that all frames have; 0 when they differ. */
  int length() {
    long lengths = frames.stream().mapToInt(Bytes::size).distinct().count();
    return lengths == 1 ? frames.get(0).size() : 0;
  }

  /** Whether a profile can find such frames: by a mark, by a pause, by what they hold. */
  boolean canBeFound() {
    return kind != Kind.BLOCK || isMarked() || quietMs > 0;
  }

  /** The profile's {@code [frame]} table. */
  String toml() {
    int longest = frames.stream().mapToInt(Bytes::size).max().orElse(0);
    return switch (kind) {
      case LINE ->
          "kind = \"line\"\n" + hex("ends_with", endsWith) + "max_bytes = " + roomFor(longest);
      case MODBUS -> "kind = \"modbus-rtu\"";
      case BLOCK -> block(longest);
    };
  }

  private String block(int longest) {
    if (length() > 0 && isMarked()) {
      return "kind = \"fixed\"\nbytes = "
          + length()
          + "\n"
          + hex("starts_with", startsWith)
          + hex("ends_with", endsWith).stripTrailing();
    }
    return String.format(
        Locale.ROOT, "kind = \"silence\"\nquiet_ms = %.0f\nmax_bytes = %d", quietMs, longest);
  }

  private boolean isMarked() {
    return startsWith.size() > 0;
  }

  private static int roomFor(int longest) {
    return Math.max(LEAST_MAX_BYTES, 2 * longest);
  }

  private static String hex(String key, Bytes bytes) {
    return bytes.size() == 0 ? "" : key + "_hex = \"" + bytes.toHex() + "\"\n";
  }
}
