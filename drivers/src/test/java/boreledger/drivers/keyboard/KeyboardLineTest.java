package boreledger.drivers.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.drivers.LineContract;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class KeyboardLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(20);
  private static final Bytes CRLF = Bytes.ofHex("0d0a");

  private double nowS;
  private final KeyboardLine line = new KeyboardLine(CRLF, () -> nowS);

  private static Bytes ascii(String text) {
    return Bytes.of(text.getBytes(StandardCharsets.US_ASCII));
  }

  private List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (LineEvent event = line.read(TIMEOUT);
        event instanceof LineEvent.Chunk chunk;
        event = line.read(TIMEOUT)) {
      texts.add(new String(chunk.bytes().toArray(), StandardCharsets.UTF_8));
    }
    return texts;
  }

  private List<String> read(String input) {
    byte[] bytes = input.getBytes(StandardCharsets.UTF_8);
    new TypedLines(new ByteArrayInputStream(bytes), line).run();
    return texts();
  }

  @Test
  void valueComesAtItsTimeWithTheEndingOfTheProfile() {
    nowS = 3.5;
    line.typed("+0.012");
    nowS = 4;
    assertEquals(new LineEvent.Chunk(3.5, ascii("+0.012\r\n")), line.read(TIMEOUT));
    assertEquals(new LineEvent.Quiet(4), line.read(TIMEOUT));
  }

  @Test
  void valueInPiecesIsToldOfAsSpoilt() {
    nowS = 2;
    line.inPieces("-12.345");
    assertEquals(
        new LineEvent.Spoilt(2, ascii("-12.345"), "came in pieces; press again"),
        line.read(TIMEOUT));
  }

  @Test
  void endComesAfterEverythingThatWasTyped() {
    line.typed("1");
    line.end();
    assertInstanceOf(LineEvent.Chunk.class, line.read(TIMEOUT));
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
  }

  @Test
  void keyboardCannotBeAsked() {
    assertEquals(
        "keyboard input cannot be asked for a reading; press the gauge's key",
        assertThrows(LineFault.class, () -> line.send(Bytes.ofHex("01"))).getMessage());
  }

  @Test
  void linesOfAStreamAreValuesWhateverTheirLineEnd() {
    assertEquals(List.of("0.45\r\n", "0.46\r\n", "\r\n"), read("0.45\n0.46\r\n\n"));
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
  }

  @Test
  void lineThatWasNotEnteredIsNoValue() {
    assertEquals(List.of("0.45\r\n", "0.4"), read("0.45\n0.4"));
  }

  @Test
  void endlessLineComesInPiecesOfWhichNoneIsAValue() {
    List<String> pieces = read("x".repeat(10_000) + "0.45");
    assertEquals(10_004, pieces.stream().mapToInt(String::length).sum());
  }

  @Test
  void brokenStreamIsTheEnd() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("torn off");
          }
        };
    new TypedLines(broken, line).run();
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() {
      KeyboardLine typedOn = new KeyboardLine(CRLF, () -> System.nanoTime() * 1e-9);
      typedOn.typed("+0.012");
      typedOn.typed("-1");
      return typedOn;
    }

    @Override
    protected Bytes content() {
      return ascii("+0.012\r\n-1\r\n");
    }
  }
}
