package boreledger.drivers.footswitch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.line.Bytes;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PressesTest {
  private final Presses presses = new Presses();

  @Test
  void everyEndingEndsOnePress() {
    assertEquals(List.of("A", "B", "C", "D"), feed("A\rB\nC\r\nD\r"));
  }

  @Test
  void anEmptyLineIsAPressToo() {
    assertEquals(List.of("", "", ""), feed("\r\r\n\n"));
  }

  @Test
  void aPressIsCompleteWithItsEndingOnly() {
    assertEquals(List.of(), feed("le"));
    assertEquals(List.of("left"), feed("ft\r"));
    assertEquals(List.of(), feed("\n"), "the second half of CRLF");
  }

  @Test
  void theCutOfTheChunksDoesNotMatter() {
    String sent = "A\r\n\r\nBB\rC\n\n";
    List<String> whole = List.of("A", "", "BB", "C", "");
    for (int at = 0; at <= sent.length(); at++) {
      Presses split = new Presses();
      List<String> all = new ArrayList<>(split.feed(bytes(sent.substring(0, at))));
      all.addAll(split.feed(bytes(sent.substring(at))));
      assertEquals(whole, all, "cut at " + at);
    }
  }

  @Test
  void aLineThatWasCutShortIsNoPress() {
    feed("lef");
    presses.cut();

    assertEquals(List.of("right"), feed("right\r"));
  }

  @Test
  void anOverlongLineIsNoPressAndTheNextOneIs() {
    assertEquals(List.of("x".repeat(256)), feed("x".repeat(256) + "\r"));
    assertEquals(List.of("A"), feed("x".repeat(10_000) + "\rA\r"));
  }

  private List<String> feed(String text) {
    return presses.feed(bytes(text));
  }

  private static Bytes bytes(String text) {
    return Bytes.of(text.getBytes(StandardCharsets.UTF_8));
  }
}
