package boreledger.station.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FaceTest {
  private PDDocument document;
  private Face face;

  @BeforeEach
  void load() throws Exception {
    document = new PDDocument();
    face = Face.in(document);
  }

  @AfterEach
  void close() throws Exception {
    document.close();
  }

  @Test
  void everySignOfTheSheetIsInTheFont() {
    String signs = "°±µπ×−≤≥…←→é";

    assertEquals(signs, face.showable(signs));
  }

  @Test
  void whatTheFontLacksIsAQuestionMarkAndAControlASpace() {
    assertEquals("a?b c", face.showable("a\u52a8b\tc"));
  }

  @Test
  void digitsAreEquallyWide() {
    for (char digit = '0'; digit <= '9'; digit++) {
      assertEquals(face.width("0", 10), face.width(String.valueOf(digit), 10), 1e-9);
    }
  }

  @Test
  void noLineIsWiderThanAskedAndNothingIsLost() {
    String words = "a few words and " + "0123456789abcdef".repeat(8) + " then\nmore";

    List<String> lines = face.wrap(words, 8, 90);

    assertTrue(lines.size() > 6, lines::toString);
    for (String line : lines) {
      assertTrue(face.width(line, 8) <= 90, line);
    }
    assertEquals(words.replaceAll("\\s", ""), String.join("", lines).replace(" ", ""));
  }

  @Test
  void noWordsAreOneEmptyLine() {
    assertEquals(List.of(""), face.wrap("", 8, 90));
  }

  @Test
  void wordsThatDoNotFitAreCutWithAnEllipsis() {
    assertEquals("short", face.cut("short", 8, 90));
    String cut = face.cut("a name that goes on and on and on", 8, 60);
    assertTrue(cut.endsWith("…") && face.width(cut, 8) <= 60, cut);
  }
}
