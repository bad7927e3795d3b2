package boreledger.station.report;

import boreledger.station.drawing.Anchor;
import boreledger.station.drawing.Point;
import boreledger.station.drawing.Role;
import boreledger.station.drawing.Stroke;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;

/** The foot of every page: the job, the page's number and the ledger's head. */
final class Feet {
  private static final double SIZE = 7;

  private final SheetFacts facts;
  private final Face face;

  Feet(SheetFacts facts, Face face) {
    this.facts = facts;
    this.face = face;
  }

  void draw(PDDocument document) throws IOException {
    int pages = document.getNumberOfPages();
    for (int i = 0; i < pages; i++) {
      try (PDPageContentStream content =
          new PDPageContentStream(document, document.getPage(i), AppendMode.APPEND, false)) {
        foot(new PdfPen(content, face, facts.paper().height()), i + 1, pages);
      }
    }
  }

  private void foot(PdfPen pen, int page, int pages) {
    double left = Paper.MARGIN;
    double right = facts.paper().width() - Paper.MARGIN;
    double bottom = facts.paper().height() - Paper.MARGIN;
    double top = bottom - Pages.FOOT + 7;
    pen.line(new Point(left, top), new Point(right, top), Stroke.solid(Role.QUIET, 0.4));
    String number = "page " + page + " of " + pages;
    double room = right - left - pen.width(number, SIZE) - 12;
    String job = face.cut("Build sheet, " + facts.job().name(), SIZE, room);
    double first = top + 8.5;
    pen.text(job, new Point(left, first), Anchor.LEFT, SIZE, Role.QUIET);
    pen.text(number, new Point(right, first), Anchor.RIGHT, SIZE, Role.INK);
    String head = "ledger head " + facts.results().ledgerHead();
    pen.text(head, new Point(left, first + 8.5), Anchor.LEFT, SIZE, Role.QUIET);
  }
}
