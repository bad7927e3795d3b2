package boreledger.drivers.learn;

import boreledger.drivers.learn.Cut.Kind;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.util.ArrayList;
import java.util.List;

/** Every way of cutting what was heard into frames that is worth a look, the likeliest first. */
final class Cuts {
  private static final List<String> ENDINGS =
      List.of("0d0a", "0a0d", "0a", "0d", "03", "04", "3b", "00");

  private final Bytes heard;
  private final Bursts bursts;

  Cuts(List<LineEvent.Chunk> chunks) {
    bursts = Bursts.of(chunks);
    heard = bursts.bytes().stream().reduce(Bytes.EMPTY, Bytes::plus);
  }

  /** Lines that end in the same bytes; the first frame also left out, as it may be torn. */
  List<Cut> lines() {
    List<Cut> cuts = new ArrayList<>();
    for (String hex : ENDINGS) {
      Bytes ending = Bytes.ofHex(hex);
      if (bursts.bytes().stream().allMatch(burst -> endsWith(burst, ending))) {
        addBoth(cuts, Kind.LINE, Bytes.EMPTY, ending, split(ending));
      }
    }
    return cuts;
  }

  /** Frames of equal length. */
  List<Cut> blocks() {
    List<Cut> cuts = new ArrayList<>();
    List<Bytes> even = evenBursts();
    if (!even.isEmpty()) {
      cuts.add(new Cut(Kind.BLOCK, Bytes.EMPTY, Bytes.EMPTY, bursts.quietMs(), even));
      return cuts;
    }
    for (int length = 3; length <= Math.min(64, heard.size() / 3); length++) {
      for (int torn = 0; torn < length; torn++) {
        List<Bytes> frames = pieces(torn, length);
        if (frames.get(0).at(0) != 0 && sameByte(frames, 0)) {
          cuts.add(new Cut(Kind.BLOCK, Bytes.EMPTY, Bytes.EMPTY, 0, frames));
        }
      }
    }
    return cuts;
  }

  /** Frames of equal length that hold text behind a mark of their own. */
  List<Cut> textBlocks() {
    return blocks().stream()
        .map(
            cut ->
                cut.marked(
                    isMark(cut) ? cut.frames().get(0).slice(0, 1) : Bytes.EMPTY, Bytes.EMPTY))
        .filter(Cut::canBeFound)
        .toList();
  }

  /** Whether frames begin with the same byte, one that is no part of a number or a word. */
  private static boolean isMark(Cut cut) {
    String first = TextFindings.text(cut.frames().get(0).slice(0, 1));
    return sameByte(cut.frames(), 0) && !first.matches("[0-9A-Za-z+., -]");
  }

  /** Modbus RTU responses to a request for registers, if that is what was heard. */
  List<Cut> modbus() {
    List<Bytes> frames = evenBursts();
    boolean all = !frames.isEmpty() && frames.stream().allMatch(ModbusResponse::isOne);
    return all
        ? List.of(new Cut(Kind.MODBUS, Bytes.EMPTY, Bytes.EMPTY, bursts.quietMs(), frames))
        : List.of();
  }

  /** Whether a person could read most of it. */
  boolean isText() {
    int readable = 0;
    for (int i = 0; i < heard.size(); i++) {
      readable += heard.at(i) >= 0x20 && heard.at(i) < 0x7f ? 1 : 0;
      if (heard.at(i) > 0x7f) {
        return false;
      }
    }
    return 2 * readable > heard.size();
  }

  private static void addBoth(
      List<Cut> cuts, Kind kind, Bytes start, Bytes end, List<Bytes> frames) {
    cuts.add(new Cut(kind, start, end, 0, frames));
    if (frames.size() > 1) {
      cuts.add(new Cut(kind, start, end, 0, frames.subList(1, frames.size())));
    }
  }

  private List<Bytes> split(Bytes ending) {
    List<Bytes> frames = new ArrayList<>();
    int from = 0;
    for (int end = ending.size(); end <= heard.size(); end++) {
      if (end - from >= ending.size() && heard.slice(end - ending.size(), end).equals(ending)) {
        frames.add(heard.slice(from, end));
        from = end;
      }
    }
    return frames;
  }

  /** Bursts of one length, a torn one at either end left out; empty when they are not even. */
  private List<Bytes> evenBursts() {
    List<Bytes> all = bursts.bytes();
    if (all.size() < 2) {
      return List.of();
    }
    int length = all.get(1).size();
    boolean firstTorn = all.get(0).size() < length;
    boolean lastTorn = all.size() > 2 && all.get(all.size() - 1).size() < length;
    List<Bytes> inner = all.subList(firstTorn ? 1 : 0, all.size() - (lastTorn ? 1 : 0));
    List<Bytes> frames = new ArrayList<>();
    for (Bytes burst : inner) {
      if (burst.size() % length != 0) {
        return List.of();
      }
      for (int from = 0; from < burst.size(); from += length) {
        frames.add(burst.slice(from, from + length));
      }
    }
    return frames;
  }

  private List<Bytes> pieces(int torn, int length) {
    List<Bytes> frames = new ArrayList<>();
    for (int from = torn; from + length <= heard.size(); from += length) {
      frames.add(heard.slice(from, from + length));
    }
    return frames;
  }

  static boolean sameByte(List<Bytes> frames, int index) {
    return frames.stream().mapToInt(frame -> frame.at(index)).distinct().count() == 1;
  }

  private static boolean endsWith(Bytes bytes, Bytes ending) {
    int from = bytes.size() - ending.size();
    return from >= 0 && bytes.slice(from, bytes.size()).equals(ending);
  }
}
