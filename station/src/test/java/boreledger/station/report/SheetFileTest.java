package boreledger.station.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.report.InventedLedger.Shape;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetFileTest {
  @TempDir Path folder;
  private InventedLedger ledger;
  private Path file;

  @BeforeEach
  void writeASheet() throws Exception {
    ledger = new InventedLedger(folder, Shape.usual()).bores().gaps(2).gauged();
    file = folder.resolve("s.pdf");
    ledger.sheet(file, Paper.A4);
  }

  @Test
  void theCodeOnTheFirstPageIsTheLedgersHead() throws Exception {
    try (ReadSheet sheet = ReadSheet.of(file)) {
      BufferedImage page = sheet.image(1, 150);
      int width = page.getWidth();
      int[] dots = page.getRGB(0, 0, width, page.getHeight(), null, 0, width);
      RGBLuminanceSource light = new RGBLuminanceSource(width, page.getHeight(), dots);

      String read =
          new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(light))).getText();

      assertEquals(ledger.results().ledgerHead(), read);
    }
  }

  @Test
  void theSameLedgerAndTimeGiveTheSameBytes() throws Exception {
    byte[] first = Files.readAllBytes(file);

    ledger.sheet(file, Paper.A4);

    assertArrayEquals(first, Files.readAllBytes(file));
  }

  @Test
  void atAnotherTimeOnlyTheTimeDiffers() throws Exception {
    Clock later = Clock.offset(InventedLedger.NOON, Duration.ofMinutes(62));
    ledger.sheet(folder.resolve("later.pdf"), Paper.A4, later);

    try (ReadSheet one = ReadSheet.of(file);
        ReadSheet other = ReadSheet.of(folder.resolve("later.pdf"))) {
      assertEquals(
          one.words().replace("2031-05-07 12:00 UTC", "-"),
          other.words().replace("2031-05-07 13:02 UTC", "-"));
    }
  }

  @Test
  void theFileTellsItsTitleItsLanguageAndItsMaker() throws Exception {
    try (ReadSheet sheet = ReadSheet.of(file)) {
      assertEquals(
          "Build sheet: Mill engine", sheet.document().getDocumentInformation().getTitle());
      assertEquals("A. Turner", sheet.document().getDocumentInformation().getAuthor());
      assertEquals("en", sheet.document().getDocumentCatalog().getLanguage());
      assertTrue(sheet.document().getDocumentCatalog().getViewerPreferences().displayDocTitle());
    }
  }

  @Test
  void everyFontIsEmbedded() throws Exception {
    try (ReadSheet sheet = ReadSheet.of(file)) {
      int fonts = 0;
      for (PDPage page : sheet.document().getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font::toString);
          fonts++;
        }
      }
      assertTrue(fonts >= sheet.pages(), "only " + fonts);
    }
  }

  @Test
  void wordsAreTakenOutInTheOrderTheyAreRead() throws Exception {
    try (ReadSheet sheet = ReadSheet.of(file)) {
      String words = sheet.words();
      int at = 0;
      for (String next :
          new String[] {
            "Mill engine",
            "Ledger head",
            "At a glance",
            "Hone or oversize",
            "Which ring for which bore",
            "Cylinder 1, bore",
            "Depth Diameter, thrust Diameter, pin Out of round",
            "Cylinder 1, top ring",
            "Cylinder 2, bore",
            "Cylinder 3, bore",
            "Gauges and sessions",
            "What these figures rest on",
            "All cautions"
          }) {
        int found = words.indexOf(next, at);
        assertTrue(found >= at, () -> next + " in " + words);
        at = found;
      }
    }
  }

  @Test
  void aNameThatTheFontCannotShowStillGivesASheet() throws Exception {
    Shape usual = Shape.usual();
    Shape named =
        new Shape(
            "Motor \u52a8\u529b \ud83d\udd27 Ж Ω é",
            usual.cylinders(),
            usual.arrangement(),
            usual.depthsMm(),
            usual.axes(),
            usual.rings(),
            usual.unit(),
            usual.limits());
    Path other = folder.resolve("other");
    new InventedLedger(other, named).bores(3).gauged().sheet(file, Paper.A4);

    try (ReadSheet sheet = ReadSheet.of(file)) {
      assertTrue(sheet.words().contains("Motor ?? ? Ж Ω é"), sheet.words());
    }
  }

  @Test
  void theFileIsAPdf() throws Exception {
    byte[] bytes = Files.readAllBytes(file);

    assertEquals("%PDF-", new String(bytes, 0, 5, StandardCharsets.US_ASCII));
  }
}
