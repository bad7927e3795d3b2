package boreledger.station.report;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A finished sheet, read back from its file. */
final class ReadSheet implements AutoCloseable {
  private final PDDocument document;

  private ReadSheet(PDDocument document) {
    this.document = document;
  }

  static ReadSheet of(Path file) throws IOException {
    return new ReadSheet(Loader.loadPDF(Files.readAllBytes(file)));
  }

  PDDocument document() {
    return document;
  }

  int pages() {
    return document.getNumberOfPages();
  }

  /** All words in the order they stand in the file, with single spaces between them. */
  String words() throws IOException {
    return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
  }

  /** The words of one page, from 1. */
  String words(int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document).replaceAll("\\s+", " ");
  }

  /** Every letter of one page, from 1, in the order it stands in the file. */
  List<TextPosition> letters(int page) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            letters.add(letter);
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(document);
    return letters;
  }

  BufferedImage image(int page, float dotsPerInch) throws IOException {
    return new PDFRenderer(document).renderImageWithDPI(page - 1, dotsPerInch);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
