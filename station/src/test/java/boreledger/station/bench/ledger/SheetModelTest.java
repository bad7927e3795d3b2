package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetModelTest {
  @TempDir Path folder;

  @Test
  void theSheetOfTheShownSessionsJobIsWrittenBesideTheLedger() throws Exception {
    SheetModel sheet = LedgerHouse.gauged(folder).model().sheet();
    Path file = folder.toAbsolutePath().resolve("pumphouse-three.pdf");
    assertEquals("Pumphouse three", sheet.job().get());
    assertEquals(file.toString(), sheet.file().get());

    sheet.write();

    assertEquals("", sheet.problem().get());
    assertTrue(sheet.done().get().startsWith(file + ": "), sheet.done().get());
    // ISO 32000-1, 7.5.2: a PDF file begins with these bytes.
    assertEquals(
        "%PDF-", new String(Arrays.copyOf(Files.readAllBytes(file), 5), StandardCharsets.US_ASCII));
  }

  @Test
  void aFileThatIsThereIsLeftUnlessAskedOtherwise() throws Exception {
    SheetModel sheet = LedgerHouse.gauged(folder).model().sheet();
    Path file = Files.writeString(folder.resolve("letter.pdf"), "Dear reader");
    sheet.file().set(file.toString());

    sheet.write();

    assertTrue(sheet.problem().get().contains("is there already"), sheet.problem().get());
    assertEquals("Dear reader", Files.readString(file));

    sheet.replace().set(true);
    sheet.write();

    assertEquals("", sheet.problem().get());
    assertFalse(Files.readString(file, StandardCharsets.ISO_8859_1).startsWith("Dear"));
  }

  @Test
  void withoutASessionThereIsNoSheet() {
    SheetModel sheet = new LedgerHouse(House.empty(folder)).model().sheet();

    sheet.write();

    assertTrue(sheet.problem().get().startsWith("There is no session"), sheet.problem().get());
  }
}
