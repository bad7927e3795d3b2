package boreledger.station.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.report.InventedLedger.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SheetLayoutTest {
  private static final double FOOT_SIZE = 7;

  @TempDir Path folder;

  /** A job and how far it was gauged. */
  @FunctionalInterface
  interface Gauging {
    InventedLedger of(Path folder) throws Exception;
  }

  static Stream<Arguments> sheets() {
    Shape bare = new Shape("No limits", 4, "flat", List.of(12.0), List.of("thrust"), 0, "mm", "");
    List<String> fourAxes = List.of("thrust", "left", "pin", "right");
    Shape axes =
        new Shape(
            "Four axes", 4, "flat", List.of(12.0, 40.0, 100.0), fourAxes, 1, "in", Shape.LIMITS);
    return Stream.of(
        sheet("usual", Paper.A4, at -> new InventedLedger(at, Shape.usual()).bores().gaps(2)),
        sheet("large", Paper.A4, at -> new InventedLedger(at, Shape.large()).bores().gaps(6)),
        sheet(
            "large in inches",
            Paper.LETTER,
            at -> new InventedLedger(at, Shape.large().with("in")).bores().gaps(1)),
        sheet("one bore", Paper.LETTER, at -> new InventedLedger(at, Shape.usual()).bores(4)),
        sheet("nothing", Paper.A4, at -> new InventedLedger(at, Shape.usual()).bores(0)),
        sheet(
            "no limits, one depth, one axis", Paper.A4, at -> new InventedLedger(at, bare).bores()),
        sheet("four axes", Paper.LETTER, at -> new InventedLedger(at, axes).bores().gaps(1)));
  }

  private static Arguments sheet(String name, Paper paper, Gauging gauging) {
    return Arguments.of(name, paper, gauging);
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("sheets")
  void everyPageHasItsSizeItsNumberAndTheHeadAndStaysInItsMargins(
      String name, Paper paper, Gauging gauging) throws Exception {
    InventedLedger ledger = gauging.of(folder).gauged();
    int told = ledger.sheet(folder.resolve("s.pdf"), paper).pages();
    String head = ledger.results().ledgerHead();

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      assertEquals(told, sheet.pages());
      for (int page = 1; page <= sheet.pages(); page++) {
        PDPage each = sheet.document().getPage(page - 1);
        // ISO 216: 210 mm by 297 mm; ANSI Y14.1 A: 8.5 in by 11 in. A point is 1/72 inch.
        assertEquals(paper == Paper.A4 ? 595.28 : 612, each.getMediaBox().getWidth(), 0.01);
        assertEquals(paper == Paper.A4 ? 841.89 : 792, each.getMediaBox().getHeight(), 0.01);
        String words = sheet.words(page);
        assertTrue(words.contains("page " + page + " of " + sheet.pages()), words);
        assertTrue(words.contains("ledger head " + head), words);
        staysInside(each, sheet.letters(page), paper, "page " + page);
        headingsHaveSomethingBelow(sheet.letters(page), "page " + page);
        assertNoLettersOverlap(sheet.letters(page), "page " + page);
      }
    }
  }

  private static void staysInside(PDPage page, List<TextPosition> letters, Paper paper, String what)
      throws Exception {
    double slack = 1;
    double left = Paper.MARGIN - slack;
    double right = paper.width() - Paper.MARGIN + slack;
    double top = Paper.MARGIN - slack;
    double bottom = paper.height() - Paper.MARGIN + slack;
    List<Point2D> points = new ArrayList<>(Strokes.of(page));
    for (Point2D point : points) {
      double y = paper.height() - point.getY();
      assertTrue(
          point.getX() >= left && point.getX() <= right && y >= top && y <= bottom,
          () -> what + ": a line at " + point);
    }
    for (TextPosition letter : letters) {
      double x = letter.getXDirAdj();
      double baseline = letter.getYDirAdj();
      assertTrue(
          x >= left
              && x + letter.getWidthDirAdj() <= right
              && baseline - letter.getHeightDir() >= top
              && baseline <= bottom,
          () -> what + ": " + letter + " at " + x + ", " + baseline);
    }
    assertTrue(points.size() > 2 && letters.size() > 100, what + " has something on it");
  }

  /** Headings are larger than what they head. */
  private static void headingsHaveSomethingBelow(List<TextPosition> letters, String what) {
    TextPosition lowest = null;
    for (TextPosition letter : letters) {
      boolean foot = Math.abs(letter.getFontSizeInPt() - FOOT_SIZE) < 0.01;
      if (!foot && (lowest == null || letter.getYDirAdj() > lowest.getYDirAdj())) {
        lowest = letter;
      }
    }
    assertTrue(lowest != null && lowest.getFontSizeInPt() < 9, what + " ends in a heading");
  }

  private static void assertNoLettersOverlap(List<TextPosition> letters, String what) {
    List<Rectangle2D> boxes = letters.stream().map(SheetLayoutTest::box).toList();
    int compared = 0;
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        TextPosition one = letters.get(i);
        TextPosition other = letters.get(j);
        assertFalse(
            boxes.get(i).intersects(boxes.get(j)),
            () -> what + ": " + one + " over " + other + " at " + one.getX() + ", " + one.getY());
        compared++;
      }
    }
    assertTrue(compared > 1000, what);
  }

  /** A letter's middle: boxes of neighbours touch, and accents reach beyond them. */
  private static Rectangle2D box(TextPosition letter) {
    double width = letter.getWidthDirAdj();
    double height = 0.5 * letter.getFontSizeInPt();
    return new Rectangle2D.Double(
        letter.getXDirAdj() + 0.2 * width, letter.getYDirAdj() - height, 0.6 * width, height);
  }
}
