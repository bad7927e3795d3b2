package boreledger.station.report;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Puts pieces onto pages, from top to bottom. */
final class Pages implements AutoCloseable {
  /** What is left free at the foot for the page's number and the ledger's head. */
  static final double FOOT = 26;

  private final PDDocument document;
  private final Face face;
  private final Paper paper;
  private PDPageContentStream content;
  private PdfPen pen;
  private double y;
  private boolean fresh;

  Pages(PDDocument document, Face face, Paper paper) throws IOException {
    this.document = document;
    this.face = face;
    this.paper = paper;
    turn();
  }

  /** Adds pieces; those that keep the next one go to a new page together with it. */
  void add(List<Piece> pieces) throws IOException {
    int from = 0;
    while (from < pieces.size()) {
      int to = from + 1;
      while (to < pieces.size() && pieces.get(to - 1).keepsNext()) {
        to++;
      }
      chain(pieces.subList(from, to));
      from = to;
    }
  }

  /** Adds pieces, on a new page if they fit there as a whole and do not here. */
  void addTogether(List<Piece> pieces) throws IOException {
    double height = Piece.height(pieces);
    if (height > left() && height <= bottom() - Paper.MARGIN) {
      turn();
    }
    add(pieces);
  }

  @Override
  public void close() throws IOException {
    content.close();
  }

  private void chain(List<Piece> chain) throws IOException {
    if (Piece.height(chain) > left() && !fresh) {
      turn();
    }
    for (Piece piece : chain) {
      if (piece.height() > left() && !fresh) {
        turn();
      }
      put(piece);
    }
  }

  private void put(Piece piece) {
    if (piece.isSpace() && fresh) {
      return;
    }
    if (fresh && piece.head() != null) {
      draw(piece.head());
    }
    fresh = false;
    draw(piece);
  }

  private void draw(Piece piece) {
    if (!piece.isSpace()) {
      piece.drawing().draw(pen, Paper.MARGIN, y);
    }
    y += piece.height();
  }

  private double left() {
    return bottom() - y;
  }

  private double bottom() {
    return paper.height() - Paper.MARGIN - FOOT;
  }

  private void turn() throws IOException {
    if (content != null) {
      content.close();
    }
    PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
    document.addPage(page);
    content = new PDPageContentStream(document, page);
    pen = new PdfPen(content, face, paper.height());
    y = Paper.MARGIN;
    fresh = true;
  }
}
