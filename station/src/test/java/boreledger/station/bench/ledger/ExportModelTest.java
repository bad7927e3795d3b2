package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportModelTest {
  @TempDir Path folder;

  @Test
  void theShownSessionsReadingsAreExportedAndNoOthers() throws Exception {
    LedgerModel room = LedgerHouse.gauged(folder).model();
    LedgerStates.choose(room, Measure.GAP);
    ExportModel model = room.export();

    model.write();

    assertEquals("", model.problem().get());
    assertTrue(model.saying().get().startsWith("Exported 9 readings"), model.saying().get());
    // RFC 4180: a header, then a line for each record.
    assertEquals(10, Files.readAllLines(Path.of(model.file().get())).size());
  }

  @Test
  void theWholeChainIsExportedAsJson() throws Exception {
    ExportModel model = LedgerHouse.gauged(folder).model().export();
    model.kind().set(ExportKind.CHAIN);

    model.write();

    Path file = folder.toAbsolutePath().resolve("house.json");
    assertEquals(file.toString(), model.file().get());
    assertEquals(40, new ObjectMapper().readTree(file.toFile()).path("entries").asInt());
  }

  @Test
  void aStoppedExportLeavesNoFileAndSaysSo() throws Exception {
    Deque<Runnable> later = new ArrayDeque<>();
    ExportModel model = LedgerHouse.gauged(folder).model(later::add).export();
    model.write();
    assertTrue(model.running().get());

    model.stop();
    later.remove().run();

    assertFalse(model.running().get());
    assertEquals("stopped; nothing was written", model.problem().get());
    assertFalse(Files.exists(Path.of(model.file().get())));
  }
}
