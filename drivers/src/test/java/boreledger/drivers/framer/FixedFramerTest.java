package boreledger.drivers.framer;

import static boreledger.drivers.framer.Wire.ascii;
import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.FrameSpec;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FixedFramerTest {
  private static final FrameSpec MARKED =
      new FrameSpec.Fixed(5, Bytes.ofHex("02"), Bytes.ofHex("0d"));

  private static List<String> cut(FrameSpec spec, String hex) {
    Bytes bytes = Bytes.ofHex(hex.replace(" ", ""));
    return Wire.timeless(Wire.feed(Framers.of(spec), List.of(bytes)));
  }

  @Test
  void picturedStreamIsCutAsPictured() {
    assertEquals(
        List.of(
            "frame: 023132330d",
            "no frame of 5 bytes starting with 02 ending with 0d: 7f7f",
            "frame: 023435360d",
            "only 2 of 5 bytes: 0237"),
        cut(MARKED, "02 31 32 33 0d 7f 7f 02 34 35 36 0d 02 37"));
  }

  @Test
  void payloadIsWithoutItsMarks() {
    List<FrameEvent> events = Wire.feed(Framers.of(MARKED), List.of(Bytes.ofHex("023132330d")));
    assertEquals(ascii("123"), ((FrameEvent.Frame) events.get(0)).payload());
  }

  @Test
  void frameThatLostAByteSpoilsOnlyItself() {
    assertEquals(
        List.of(
            "no frame of 5 bytes starting with 02 ending with 0d: 0231330d", "frame: 023435360d"),
        cut(MARKED, "02 31 33 0d 02 34 35 36 0d"));
  }

  @Test
  void startByteInsideAMessageDoesNotHideTheNextFrame() {
    assertEquals(
        List.of(
            "no frame of 5 bytes starting with 02 ending with 0d: 02023132", "frame: 020202020d"),
        cut(MARKED, "02 02 31 32 02 02 02 02 0d"));
  }

  @Test
  void endingAloneFindsTheCutAgain() {
    FrameSpec spec = new FrameSpec.Fixed(3, Bytes.EMPTY, Bytes.ofHex("0d"));
    assertEquals(
        List.of("no frame of 3 bytes ending with 0d: 39", "frame: 31320d", "frame: 33340d"),
        cut(spec, "39 31 32 0d 33 34 0d"));
  }

  @Test
  void withoutMarksEveryRunIsAFrame() {
    FrameSpec spec = new FrameSpec.Fixed(2, Bytes.EMPTY, Bytes.EMPTY);
    assertEquals(
        List.of("frame: 3132", "frame: 3334", "only 1 of 2 bytes: 35"),
        cut(spec, "31 32 33 34 35"));
  }

  @Nested
  class WithStartAndEnding extends FramerContract {
    @Override
    FrameSpec spec() {
      return MARKED;
    }

    @Override
    int maxBytes() {
      return 5;
    }

    @Override
    List<Bytes> frames() {
      return List.of(Bytes.ofHex("023132330d"), Bytes.ofHex("02ff80000d"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(Bytes.ofHex("7f"), Bytes.ofHex("0d0a"), ascii("x".repeat(23)));
    }
  }

  @Nested
  class WithALongStart extends FramerContract {
    @Override
    FrameSpec spec() {
      return new FrameSpec.Fixed(8, ascii("aab"), Bytes.EMPTY);
    }

    @Override
    int maxBytes() {
      return 8;
    }

    @Override
    List<Bytes> frames() {
      return List.of(ascii("aab12345"), ascii("aabaaaaa"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(ascii("a"), ascii("aa"), ascii("ba"), ascii("a".repeat(50)));
    }
  }

  @Nested
  class WithAnEndingOnly extends FramerContract {
    @Override
    FrameSpec spec() {
      return new FrameSpec.Fixed(6, Bytes.EMPTY, ascii("\r\n"));
    }

    @Override
    int maxBytes() {
      return 6;
    }

    @Override
    List<Bytes> frames() {
      return List.of(ascii("1234\r\n"), ascii("-0.1\r\n"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(ascii("1"), ascii("\n"), ascii("y".repeat(31)));
    }
  }
}
