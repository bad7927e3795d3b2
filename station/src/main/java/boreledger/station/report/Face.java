package boreledger.station.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The sheet's one font, embedded: Liberation Sans as it comes with the PDF library. Its digits are
 * all equally wide.
 */
final class Face {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final char UNKNOWN = '?';

  private final PDFont font;
  private final CmapLookup glyphs;

  private Face(PDFont font, CmapLookup glyphs) {
    this.font = font;
    this.glyphs = glyphs;
  }

  /** Embeds the font into a document. */
  static Face in(PDDocument document) throws IOException {
    try (InputStream file = PDDocument.class.getResourceAsStream(FILE)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
      // Ligatures would come back as other letters when the text is taken out of the file.
      font.setEnableGsub(false);
      return new Face(PDType0Font.load(document, font, true), font.getUnicodeCmapLookup());
    }
  }

  PDFont font() {
    return font;
  }

  /** Words that the font can show: what it lacks becomes a question mark, controls a space. */
  String showable(String words) {
    StringBuilder text = new StringBuilder();
    words
        .codePoints()
        .forEach(
            each -> {
              if (Character.isWhitespace(each) || Character.isISOControl(each)) {
                text.append(' ');
              } else if (glyphs.getGlyphId(each) == 0) {
                text.append(UNKNOWN);
              } else {
                text.appendCodePoint(each);
              }
            });
    return text.toString();
  }

  /** How wide words are on one line. */
  double width(String words, double size) {
    try {
      return font.getStringWidth(showable(words)) * size / 1000;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Words as lines that are no wider than asked; a longer word is broken where it must be. */
  List<String> wrap(String words, double size, double width) {
    List<String> lines = new ArrayList<>();
    words.lines().forEach(line -> wrapLine(line, size, width, lines));
    return lines.isEmpty() ? List.of("") : lines;
  }

  /** As much of some words as fits, with an ellipsis when something was left out. */
  String cut(String words, double size, double width) {
    if (width(words, size) <= width) {
      return words;
    }
    String head = words;
    while (!head.isEmpty() && width(head + "\u2026", size) > width) {
      head = head.substring(0, head.offsetByCodePoints(head.length(), -1));
    }
    return head + "\u2026";
  }

  private void wrapLine(String words, double size, double width, List<String> lines) {
    String line = "";
    for (String word : words.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, size) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, size) > width) {
        int fits = fitting(line, size, width);
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
      }
    }
    lines.add(line);
  }

  private int fitting(String word, double size, double width) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (width(word.substring(0, next), size) > width) {
        break;
      }
      end = next;
    }
    return end;
  }
}
