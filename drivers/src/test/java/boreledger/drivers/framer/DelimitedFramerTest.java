package boreledger.drivers.framer;

import static boreledger.drivers.framer.Wire.ascii;
import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DelimitedFramerTest {
  private static List<String> cut(String ending, int maxBytes, String text) {
    Framer framer = Framers.of(new FrameSpec.Delimited(ascii(ending), maxBytes));
    List<String> seen = new ArrayList<>();
    for (FrameEvent event : Wire.feed(framer, List.of(ascii(text)))) {
      if (event instanceof FrameEvent.Frame frame) {
        seen.add("frame " + latin(frame.payload()));
      } else {
        seen.add(((FrameEvent.Damage) event).why() + ": " + latin(event.raw()));
      }
    }
    return seen;
  }

  private static String latin(Bytes bytes) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < bytes.size(); i++) {
      text.append((char) bytes.at(i));
    }
    return text.toString().replace("\r", "<CR>").replace("\n", "<LF>");
  }

  @Test
  void picturedStreamIsCutAsPictured() {
    assertEquals(
        List.of(
            "frame +0.1",
            "frame ",
            "longer than 8 bytes without an ending: 123456789<CR><LF>",
            "ended without its ending: -1"),
        cut("\r\n", 8, "+0.1\r\n\r\n123456789\r\n-1"));
  }

  @Test
  void frameOfTheLargestSizeIsWhole() {
    assertEquals(List.of("frame 123456"), cut("\r\n", 8, "123456\r\n"));
  }

  @Test
  void endingHalfInsideTheLargestSizeIsStillFound() {
    assertEquals(
        List.of("longer than 8 bytes without an ending: 1234567<CR><LF>", "frame 8"),
        cut("\r\n", 8, "1234567\r\n8\r\n"));
  }

  @Test
  void carriageReturnBeforeTheEndingBelongsToTheFrame() {
    assertEquals(List.of("frame 1<CR>", "frame 2"), cut("\r\n", 8, "1\r\r\n2\r\n"));
  }

  @Test
  void endingThatOverlapsItselfIsFoundAfterAMismatch() {
    assertEquals(List.of("frame xa", "frame y"), cut("aab", 8, "xaaabyaab"));
  }

  @Test
  void endingIsNotSharedByTwoFrames() {
    assertEquals(List.of("frame ", "ended without its ending: a"), cut("aa", 8, "aaa"));
  }

  @Test
  void tenThousandBytesInALineAreOneDamage() {
    assertEquals(
        List.of(
            "longer than 64 bytes without an ending: " + "x".repeat(10_000) + "<LF>", "frame +0.1"),
        cut("\n", 64, "x".repeat(10_000) + "\n+0.1\n"));
  }

  @Test
  void lineWithoutEndComesInPieces() {
    int most = DelimitedFramer.MOST_DAMAGE;
    assertEquals(
        List.of(
            "longer than 64 bytes without an ending: " + "x".repeat(most),
            "discarded until the next ending: " + "x".repeat(most),
            "discarded until the next ending: xxx<LF>",
            "frame +0.1"),
        cut("\n", 64, "x".repeat(2 * most + 3) + "\n+0.1\n"));
  }

  @Test
  void endingRightAfterAPieceStillEndsTheDamage() {
    int most = DelimitedFramer.MOST_DAMAGE;
    assertEquals(
        List.of(
            "longer than 64 bytes without an ending: " + "x".repeat(most - 1) + "<CR>",
            "discarded until the next ending: <LF>",
            "frame +0.1"),
        cut("\r\n", 64, "x".repeat(most - 1) + "\r\n+0.1\r\n"));
  }

  @Test
  void frameMayBeLongerThanAPieceOfDamage() {
    String text = "x".repeat(DelimitedFramer.MOST_DAMAGE + 10);
    assertEquals(List.of("frame " + text), cut("\n", 65_536, text + "\n"));
  }

  @Test
  void bytesOver127AreKept() {
    assertEquals(List.of("frame \u00ff\u0080"), cut("\u00fe", 8, "\u00ff\u0080\u00fe"));
  }

  @Nested
  class WithCarriageReturnAndLineFeed extends FramerContract {
    @Override
    FrameSpec spec() {
      return new FrameSpec.Delimited(ascii("\r\n"), maxBytes());
    }

    @Override
    int maxBytes() {
      return 16;
    }

    @Override
    int mostDamage() {
      return DelimitedFramer.MOST_DAMAGE;
    }

    @Override
    List<Bytes> frames() {
      return List.of(ascii("+0.012 mm\r\n"), ascii("\r\r\n"), ascii("\r\n"), ascii("-1.5\r\n"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(
          ascii("\u0000\u00ff\r\n"), ascii("x".repeat(70) + "\r\n"), ascii("1234567890123456\r\n"));
    }
  }

  @Nested
  class WithAnEndingThatOverlapsItself extends FramerContract {
    @Override
    FrameSpec spec() {
      return new FrameSpec.Delimited(ascii("aab"), maxBytes());
    }

    @Override
    int maxBytes() {
      return 9;
    }

    @Override
    int mostDamage() {
      return DelimitedFramer.MOST_DAMAGE;
    }

    @Override
    List<Bytes> frames() {
      return List.of(ascii("1aab"), ascii("aaab"), ascii("aab"), ascii("abaaab"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(ascii("aaaaaaaaaaaaaaab"), ascii("ab".repeat(9) + "aab"));
    }
  }

  @Nested
  class WithOneByte extends FramerContract {
    @Override
    FrameSpec spec() {
      return new FrameSpec.Delimited(ascii("\n"), maxBytes());
    }

    @Override
    int maxBytes() {
      return 2;
    }

    @Override
    int mostDamage() {
      return DelimitedFramer.MOST_DAMAGE;
    }

    @Override
    List<Bytes> frames() {
      return List.of(ascii("1\n"), ascii("\n"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(ascii("12\n"), ascii("12345\n"));
    }
  }
}
