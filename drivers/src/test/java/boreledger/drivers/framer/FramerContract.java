package boreledger.drivers.framer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What every framer must do that does not live on time. */
abstract class FramerContract {
  private static final int SEEDS = 300;

  abstract FrameSpec spec();

  /** The most bytes a frame may have. */
  abstract int maxBytes();

  /** The most bytes damage may have, and the most that may be held back. */
  int mostDamage() {
    return 2 * maxBytes();
  }

  /** Whole frames as they stand on the wire; at least two. */
  abstract List<Bytes> frames();

  /** Damage after which, and before which, a frame is still found whole. */
  abstract List<Bytes> junk();

  private List<FrameEvent> feed(List<Bytes> parts) {
    return Wire.feed(Framers.of(spec()), parts);
  }

  private Bytes stream() {
    List<Bytes> parts = new ArrayList<>(frames());
    for (Bytes junk : junk()) {
      parts.add(junk);
      parts.addAll(frames());
    }
    return Wire.join(parts);
  }

  /** Frames, junk, halves of frames and arbitrary bytes. */
  private Bytes mixture(Random random) {
    Bytes mixed = Bytes.EMPTY;
    for (int i = 0; i < 8; i++) {
      Bytes next = frames().get(random.nextInt(frames().size()));
      int kind = random.nextInt(4);
      if (kind == 0) {
        byte[] noise = new byte[random.nextInt(2 * maxBytes())];
        random.nextBytes(noise);
        next = Bytes.of(noise);
      } else if (kind == 1) {
        next = next.slice(random.nextInt(next.size()), next.size());
      } else if (kind == 2) {
        next = next.slice(0, random.nextInt(next.size()));
      }
      mixed = mixed.plus(next);
    }
    return mixed;
  }

  private static List<Bytes> cut(Bytes bytes, Random random) {
    List<Bytes> parts = new ArrayList<>();
    int from = 0;
    while (from < bytes.size()) {
      int to = Math.min(bytes.size(), from + random.nextInt(1 + random.nextInt(20)));
      parts.add(bytes.slice(from, to));
      from = to;
    }
    return parts;
  }

  @Test
  void framesInOneChunkAllComeOut() {
    assertEquals(frames(), Wire.frames(feed(List.of(Wire.join(frames())))));
  }

  @Test
  void cutAtAnyPositionGivesTheSameEvents() {
    Bytes stream = stream();
    List<String> whole = Wire.timeless(feed(List.of(stream)));
    assertTrue(whole.size() >= 2);
    for (int i = 0; i <= stream.size(); i++) {
      List<Bytes> parts = List.of(stream.slice(0, i), stream.slice(i, stream.size()));
      assertEquals(whole, Wire.timeless(feed(parts)), "cut at " + i);
    }
  }

  @Test
  void byteByByteGivesTheSameEvents() {
    List<String> whole = Wire.timeless(feed(List.of(stream())));
    assertEquals(whole, Wire.timeless(feed(Wire.byteByByte(stream()))));
  }

  @Test
  void framesAreFoundBeforeBetweenAndAfterJunk() {
    for (Bytes junk : junk()) {
      List<Bytes> parts = new ArrayList<>();
      for (Bytes frame : frames()) {
        parts.add(junk);
        parts.add(frame);
      }
      parts.add(junk);
      List<Bytes> found = Wire.frames(feed(parts));
      for (Bytes frame : frames()) {
        assertTrue(found.contains(frame), frame + " after junk " + junk + " in " + found);
      }
    }
  }

  @Test
  void everyByteIsInExactlyOneEventHoweverCut() {
    int damaged = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Bytes mixed = mixture(random);
      List<FrameEvent> whole = feed(List.of(mixed));
      List<FrameEvent> events = feed(cut(mixed, random));
      assertEquals(mixed, Wire.raw(events), "seed " + seed);
      assertEquals(Wire.timeless(whole), Wire.timeless(events), "seed " + seed);
      damaged += events.stream().anyMatch(FrameEvent.Damage.class::isInstance) ? 1 : 0;
    }
    assertTrue(damaged > 0);
  }

  @Test
  void timeIsThatOfTheChunkWithTheLastByte() {
    Random random = new Random(1);
    Bytes mixed = mixture(random);
    int lastByte = -1;
    for (FrameEvent event : feed(Wire.byteByByte(mixed))) {
      lastByte += event.raw().size();
      assertEquals(lastByte, event.tS());
    }
    assertEquals(mixed.size() - 1, lastByte);
  }

  @Test
  void eventsAndWhatIsHeldBackAreBounded() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Framer framer = Framers.of(spec());
      int held = 0;
      for (Bytes part : Wire.byteByByte(mixture(new Random(seed)))) {
        held += part.size();
        for (FrameEvent event : framer.feed(new LineEvent.Chunk(0, part))) {
          int most = event instanceof FrameEvent.Frame ? maxBytes() : mostDamage();
          assertTrue(event.raw().size() <= most, "seed " + seed);
          held -= event.raw().size();
        }
        assertTrue(held <= mostDamage(), "seed " + seed);
      }
    }
  }

  @Test
  void endlessJunkFillsNoMemory() {
    Framer framer = Framers.of(spec());
    Random random = new Random(7);
    byte[] noise = new byte[8192];
    long held = 0;
    for (int i = 0; i < 256; i++) {
      random.nextBytes(noise);
      held += noise.length;
      for (FrameEvent event : framer.feed(new LineEvent.Chunk(i, Bytes.of(noise)))) {
        held -= event.raw().size();
      }
      assertTrue(held <= mostDamage(), held + " bytes held");
    }
  }

  @Test
  void noEventIsEmpty() {
    for (int seed = 0; seed < SEEDS; seed++) {
      for (FrameEvent event : feed(cut(mixture(new Random(seed)), new Random(seed)))) {
        assertTrue(event.raw().size() > 0, "seed " + seed);
      }
    }
  }

  @Test
  void quietChangesNothing() {
    Framer framer = Framers.of(spec());
    List<Bytes> found = new ArrayList<>();
    for (Bytes part : Wire.byteByByte(Wire.join(frames()))) {
      found.addAll(Wire.frames(framer.feed(new LineEvent.Chunk(0, part))));
      assertEquals(List.of(), framer.feed(new LineEvent.Quiet(0)));
    }
    assertEquals(frames(), found);
  }

  @Test
  void emptyChunkChangesNothing() {
    assertEquals(List.of(), feed(List.of(Bytes.EMPTY)));
  }
}
