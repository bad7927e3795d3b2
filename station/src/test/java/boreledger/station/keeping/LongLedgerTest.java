package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.audit.AuditReport;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.ledger.ChainReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A ledger as long as is asked for: {@code -Dboreledger.long.sessions=3106} makes one of a million
 * readings, and {@code -Dboreledger.long.file=FILE} keeps it for measuring.
 */
class LongLedgerTest {
  private static final int SESSIONS = Integer.getInteger("boreledger.long.sessions", 4);
  private static final long READINGS = (long) SESSIONS * LongLedger.READINGS_A_SESSION;

  @TempDir Path folder;
  private Path ledger;

  @BeforeEach
  void fill() throws Exception {
    String kept = System.getProperty("boreledger.long.file");
    ledger = kept == null ? folder.resolve("long.db") : Path.of(kept);
    Files.deleteIfExists(ledger);
    LongLedger.fill(ledger, folder.resolve("scratch"), SESSIONS);
  }

  @Test
  void everyReadingIsAuditedAndExported() throws Exception {
    AuditReport report = LedgerAudit.of(ledger, Map.of(), Set.of(), (at, of) -> true);
    assertEquals(List.of(), report.findings());
    assertEquals(READINGS, report.recomputed());
    assertEquals(0, report.differing());

    Path csv = folder.resolve("long.csv");
    new Export(ledger, Export.Format.CSV, Shop.ALL).into(csv, false, Progress.UNWATCHED);
    try (var lines = Files.lines(csv)) {
      assertEquals(1 + READINGS, lines.count());
    }

    Path json = folder.resolve("long.json");
    new Export(ledger, Export.Format.JSON, Shop.ALL).into(json, false, Progress.UNWATCHED);
    try (ExportFile export = ExportFile.open(json);
        ChainReader chain = ChainReader.open(ledger)) {
      long[] rows = new long[1];
      export.follow(row -> rows[0]++);
      assertEquals(chain.entries(), rows[0]);
      assertEquals(chain.headHash().toHex(), export.told().head());
    }
  }
}
