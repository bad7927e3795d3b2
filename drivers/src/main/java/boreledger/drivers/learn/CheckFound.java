package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.CheckSpec.Cyclic;
import boreledger.drivers.profile.CheckSpec.Sum;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A check that every frame carries about itself, found by trying.
 *
 * @param sum how it is computed
 * @param from the first byte covered
 * @param to the first byte not covered any more, counted from the frame's end
 * @param at where it stands, counted from the frame's end
 * @param hexText whether it stands there as hexadecimal digits
 * @param little whether its least significant byte comes first
 */
record CheckFound(Sum sum, int from, int to, int at, boolean hexText, boolean little) {
  private static final int FARTHEST_START = 3;
  private static final int FARTHEST_END = 6;
  private static final int LEAST_FRAMES = 3;

  /** The check that holds on all frames; empty when none does, or too few frames differ. */
  static Optional<CheckFound> in(List<Bytes> frames) {
    if (new HashSet<>(frames).size() < LEAST_FRAMES) {
      return Optional.empty();
    }
    return places().stream().filter(check -> check.holdsOn(frames)).findFirst();
  }

  /** How many bytes of the frame it takes up. */
  int size() {
    return hexText ? 2 * sum.bytes() : sum.bytes();
  }

  /** Its {@code [[check]]} table. */
  String toml() {
    String order = little ? "little" : "big";
    return CommonChecks.toml(sum)
        + (sum instanceof Cyclic ? "\nbyte_order = \"" + order + "\"" : "")
        + (hexText ? "\nas = \"hex-text\"" : "")
        + "\nfrom = "
        + from
        + "\nto = "
        + to
        + "\nat = "
        + at;
  }

  private static List<CheckFound> places() {
    List<CheckFound> places = new ArrayList<>();
    for (Sum sum : CommonChecks.ALL) {
      for (boolean hexText : new boolean[] {false, true}) {
        int size = hexText ? 2 * sum.bytes() : sum.bytes();
        for (int at = -size; at >= -size - FARTHEST_END; at--) {
          for (int from = 0; from <= FARTHEST_START; from++) {
            for (int gap = 0; gap <= 1; gap++) {
              places.add(new CheckFound(sum, from, at - gap, at, hexText, false));
              if (sum.bytes() > 1) {
                places.add(new CheckFound(sum, from, at - gap, at, hexText, true));
              }
            }
          }
        }
      }
    }
    return places;
  }

  /** Whether it holds on all frames, and says something else for some than for others. */
  private boolean holdsOn(List<Bytes> frames) {
    Set<Bytes> seen = new HashSet<>();
    for (Bytes frame : frames) {
      if (frame.size() + to <= from + 1) {
        return false;
      }
      int start = frame.size() + at;
      Bytes sent = frame.slice(start, start + size());
      if (!sent.equals(expected(sum.of(frame.slice(from, frame.size() + to)), sent))) {
        return false;
      }
      seen.add(sent);
    }
    return seen.size() > 1;
  }

  private Bytes expected(long check, Bytes sent) {
    byte[] bytes = new byte[sum.bytes()];
    for (int i = 0; i < bytes.length; i++) {
      int place = little ? i : bytes.length - 1 - i;
      bytes[i] = (byte) (check >>> (8 * place));
    }
    if (!hexText) {
      return Bytes.of(bytes);
    }
    String hex = Bytes.of(bytes).toHex();
    String text = new String(sent.toArray(), StandardCharsets.ISO_8859_1);
    return text.equalsIgnoreCase(hex) ? sent : Bytes.of(hex.getBytes(StandardCharsets.US_ASCII));
  }
}
