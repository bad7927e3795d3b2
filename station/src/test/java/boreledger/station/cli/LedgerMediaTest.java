package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import boreledger.station.audit.AuditedLedger;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.table.ContentHash;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ledgers on media that are full or may not be written to. */
class LedgerMediaTest {
  private static final String MOST = "2m";
  // Enough to begin a session of the small engine, too little to end it.
  private static final int ROOM_FOR_SOME = 150_000;

  @TempDir Path folder;
  private Path source;

  @BeforeEach
  void gauge() {
    source = AuditedLedger.gauged(folder).file();
  }

  @Test
  void aFileThatMayNotBeWrittenToIsReadAndNotWritten() throws Exception {
    try (Medium file = Medium.readOnlyFile(source)) {
      Asking asking = asking(file.path());
      asking.isIntact(AuditedLedger.LAST);
      asking.writingIsRefused(
          ": could not write to the ledger: the file or its folder may not be written to; check its"
              + " permissions");
    }
    asking(source).replay().ended(0);
  }

  @Test
  void aLedgerOnAReadOnlyMediumIsReadAndNotWritten() throws Exception {
    try (Medium medium = Medium.mounted(folder, MOST)) {
      Asking asking = asking(Files.copy(source, medium.path().resolve("bench.db")));
      medium.makeReadOnly();

      asking.isIntact(AuditedLedger.LAST);
      asking.writingIsRefused(
          ": could not open the ledger: the file or its folder is missing or not permitted; check"
              + " its name and permissions");
    }
  }

  @Test
  void onAReadOnlyMediumALedgerWithItsLogIsNotReadWithoutTheLog() throws Exception {
    try (Medium medium = Medium.mounted(folder, MOST)) {
      Path ledger = Files.copy(source, medium.path().resolve("bench.db"));
      long said = killAWriter(ledger);
      medium.makeReadOnly();

      asking(ledger)
          .readingIsRefused(
              ": could not read the ledger: its last entries stand in bench.db-wal, and no lock"
                  + " file can be made beside it; copy both into another folder");
      Path copy = Files.copy(ledger, folder.resolve("copy.db"));
      Files.copy(Path.of(ledger + "-wal"), Path.of(copy + "-wal"));
      assertTrue(entries(copy) >= said);
    }
  }

  @Test
  void onAFullDiskALedgerIsReadAndNotWrittenUntilThereIsRoom() throws Exception {
    try (Medium medium = Medium.mounted(folder, MOST)) {
      Asking asking = asking(Files.copy(source, medium.path().resolve("bench.db")));
      medium.fill();

      asking.isIntact(AuditedLedger.LAST);
      asking.writingIsRefused(
          ": could not open the ledger: there is no room for its lock file; make room on the disk"
              + " and start again");
      medium.makeRoom();
      asking.replay().ended(0);
    }
  }

  @Test
  void whenTheDiskFillsUpNothingAcknowledgedIsLostAndWithRoomItGoesOn() throws Exception {
    try (Medium medium = Medium.mounted(folder, MOST)) {
      Path file = Files.copy(source, medium.path().resolve("bench.db"));
      long acknowledged;
      try (Ledger ledger = Ledger.open(file)) {
        acknowledged = ledger.append(note(0));
        medium.fill();
        LedgerFault fault = assertThrows(LedgerFault.class, () -> appendMany(ledger));
        assertEquals(
            file + ": could not write to the ledger: the disk is full; make room and start again",
            fault.getMessage());
        acknowledged = ledger.headSeq();
        asking(file).isIntact(acknowledged);
        medium.makeRoom();
        assertEquals(acknowledged + 1, ledger.append(note(1)));
      }
      asking(file).isIntact(acknowledged + 1);
    }
  }

  @Test
  void aReplayThatFillsTheDiskKeepsWhatItAcknowledged() throws Exception {
    try (Medium medium = Medium.mounted(folder, MOST)) {
      Asking asking = asking(medium.path().resolve("bench.db"));
      medium.leave(ROOM_FOR_SOME);

      asking.writingIsRefused(
          ": could not write to the ledger: the disk is full; make room and start again");
      long entries = entries(asking.ledger());
      asking.isIntact(entries);
      medium.makeRoom();
      asking.isIntact(entries);
      asking.replay().ended(0);
    }
  }

  private static void appendMany(Ledger ledger) throws LedgerFault {
    for (int i = 2; i < 10_000; i++) {
      ledger.append(note(i));
    }
  }

  private static long entries(Path ledger) {
    return Ran.command("audit", "--json", "--ledger", ledger)
        .ended(0)
        .json()
        .path("entries")
        .asLong();
  }

  private static EntryBody note(int number) {
    String text = "x = " + number;
    return new Document("table", "a.toml", ContentHash.of(text), text);
  }

  private static long killAWriter(Path ledger) throws Exception {
    try (OtherProgram other = OtherProgram.appending(ledger)) {
      other.nextWord();
      long said = Long.parseLong(other.kill());
      Files.deleteIfExists(Path.of(ledger + "-shm"));
      return said;
    }
  }

  private Asking asking(Path ledger) {
    return new Asking(ledger, new BenchFolder(folder));
  }
}
