package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import boreledger.station.app.BenchFolder;
import boreledger.station.audit.AuditedLedger;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ledger files that are damaged, locked, left behind, or something else. */
class LedgerFaultsTest {
  private static final int PAGE_BYTES = 4096;
  private static final long SEED = 91;

  @TempDir Path folder;
  private Path file;
  private Asking asking;

  @BeforeEach
  void gauge() {
    file = AuditedLedger.gauged(folder).file();
    asking = new Asking(file, new BenchFolder(folder));
  }

  @Test
  void aFileThatIsNoDatabaseIsRefusedAndLeftAsItIs() throws Exception {
    String letter = "Dear reader, this is a letter and no ledger.\n".repeat(99);
    Files.writeString(file, letter);

    asking.readingIsRefused(
        ": could not read the ledger: the file is no ledger; name another file");
    asking.writingIsRefused(
        ": could not open the ledger: the file is no ledger; name another file");
    assertEquals(letter, Files.readString(file));
  }

  @Test
  void inAnEmptyFileNothingStandsUntilALedgerIsBegunInIt() throws Exception {
    Files.write(file, new byte[0]);

    asking.readingIsRefused(
        ": nothing stands in this file yet; demo, bench, capture and replay begin a ledger in it");
    assertEquals(0, Files.size(file));
    asking.replay().ended(0);
    asking.isIntact(14);
  }

  @Test
  void aLedgerOfANewerProgramIsRefusedAndLeftAsItIs() throws Exception {
    AuditedLedger.at(file).changed("PRAGMA user_version = 2");
    byte[] before = Files.readAllBytes(file);

    String why = ": ledger version 2, this program knows 1; use the newer program that wrote it";
    asking.readingIsRefused(why);
    asking.writingIsRefused(why);
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void aLedgerThatAnotherProcessHoldsLockedIsRefusedUntilItLetsGo() throws Exception {
    try (OtherProgram other = OtherProgram.locking(file)) {
      asking.readingIsRefused(
          ": could not read the ledger: another program is writing to it; close that one first");
      asking.writingIsRefused(
          ": could not open the ledger: another program is writing to it; close that one first");
      other.kill();
    }
    asking.isIntact(AuditedLedger.LAST);
  }

  @Test
  void whatAKilledProcessHadAcknowledgedIsThereAndItsLogIsGoneOnWith() throws Exception {
    long said;
    try (OtherProgram other = OtherProgram.appending(file)) {
      for (int entries = 0; entries < 20; entries++) {
        other.nextWord();
      }
      said = Long.parseLong(other.kill());
    }
    assertTrue(Files.size(Path.of(file + "-wal")) > 0, "it left its log");

    long entries =
        Ran.command("audit", "--json", "--ledger", file).ended(0).json().path("entries").asLong();
    // One more may have become durable in the instant before it could say so.
    assertTrue(entries == said || entries == said + 1, entries + " entries, it said " + said);
    asking.isIntact(entries);
    asking.replay().ended(0);
    assertEquals("", asking.audit().ended(0).err());
  }

  @Test
  void theLogOfAnotherLedgerBesideItIsFound() throws Exception {
    Path other = AuditedLedger.gauged(Files.createDirectory(folder.resolve("other"))).file();
    try (OtherProgram writer = OtherProgram.appending(other)) {
      writer.nextWord();
      writer.kill();
    }
    Files.copy(Path.of(other + "-wal"), Path.of(file + "-wal"));

    Ran audit = asking.audit().ended(1);
    assertTrue(audit.out().startsWith("Not intact: "), audit::toString);
  }

  @Test
  void aChangeThatAnotherProgramLeftHalfDoneIsTakenBack() throws Exception {
    Path left = folder.resolve("left.db");
    leaveHalfDone(left);
    assertTrue(Files.size(Path.of(left + "-journal")) > 0, "it left its journal");

    new Asking(left, asking.bench()).isIntact(AuditedLedger.LAST);
    for (long seq = 1; seq <= AuditedLedger.LAST; seq++) {
      assertEquals(AuditedLedger.at(file).body(seq), AuditedLedger.at(left).body(seq));
    }
  }

  @Test
  void garbageInAPageInTheMiddleIsToldByEveryCommand() throws Exception {
    byte[] content = Files.readAllBytes(file);
    damage(content, content.length / PAGE_BYTES / 2);

    String damaged = "the file is damaged; go on with a copy kept elsewhere";
    String why = file + ": could not read the ledger: " + damaged;
    assertEquals(why, asking.results().refused(4).err().strip());
    assertEquals(why, asking.report().refused(4).err().strip());
    Ran audit = asking.audit().ended(1);
    assertTrue(audit.out().startsWith("Not intact: "), audit::toString);
    assertTrue(audit.out().contains(why), audit::toString);
    assertEquals(4, asking.replay().status());
  }

  @Test
  void garbageInAnyPageIsNeverPassedOver() throws Exception {
    byte[] content = Files.readAllBytes(file);
    String results = asking.results().out();
    int pages = content.length / PAGE_BYTES;
    for (int page = 0; page < pages; page++) {
      damage(content, page);

      Ran audit = asking.audit();
      assertTrue(audit.status() == 1 || audit.status() == 4, "page " + page + ": " + audit);
      assertFalse(audit.err().contains("\tat "), audit::toString);
      Ran read = asking.results();
      if (read.status() == 0) {
        assertEquals(results, read.out(), "page " + page);
      } else {
        read.refused(4);
      }
    }
    assertTrue(pages > 5, pages + " pages");
  }

  @Test
  void entriesBeforeADamageAreStillChecked() throws Exception {
    byte[] content = Files.readAllBytes(file);
    AuditedLedger ledger = AuditedLedger.at(file);
    int damagedPage =
        new String(content, StandardCharsets.ISO_8859_1).indexOf(ledger.body(AuditedLedger.LAST))
            / PAGE_BYTES;
    damage(content, damagedPage);

    JsonNode answer = Ran.command("audit", "--json", "--ledger", file).ended(1).json();
    assertTrue(answer.path("entries").asInt() > 5, answer::toPrettyString);
    assertFalse(answer.toString().contains("no entry at all"), answer::toPrettyString);
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aFileThatMayNotBeReadIsRefused() throws Exception {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    assumeFalse(Files.isReadable(file), "permissions do not bind root");

    asking.readingIsRefused(
        ": could not read the ledger: the file or its folder is missing or not permitted; check its"
            + " name and permissions");
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aFolderThatMayNotBeWrittenToIsReadAndNotWritten() throws Exception {
    Path locked = Files.createDirectory(folder.resolve("locked"));
    Path ledger = Files.copy(file, locked.resolve("bench.db"));
    Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      assumeFalse(Files.isWritable(locked), "permissions do not bind root");
      Asking there = new Asking(ledger, asking.bench());
      there.isIntact(AuditedLedger.LAST);
      there.writingIsRefused(
          ": could not open the ledger: the file or its folder may not be written to; check its"
              + " permissions");
    } finally {
      Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("rwx------"));
    }
  }

  private void damage(byte[] content, int page) throws IOException {
    byte[] damaged = content.clone();
    byte[] garbage = new byte[PAGE_BYTES];
    new Random(SEED + page).nextBytes(garbage);
    System.arraycopy(garbage, 0, damaged, page * PAGE_BYTES, PAGE_BYTES);
    Files.write(file, damaged);
    Files.deleteIfExists(Path.of(file + "-wal"));
    Files.deleteIfExists(Path.of(file + "-shm"));
  }

  /** Copies the file in the midst of a change to all of it, with the journal that undoes it. */
  private void leaveHalfDone(Path left) throws Exception {
    Path changing = Files.copy(file, folder.resolve("changing.db"));
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + changing);
        Statement sql = connection.createStatement()) {
      sql.execute("PRAGMA journal_mode = DELETE");
      byte[] before = Files.readAllBytes(changing);
      sql.execute("PRAGMA cache_size = 1");
      sql.execute("BEGIN");
      sql.execute("DROP TRIGGER entry_no_update");
      sql.execute("UPDATE entry SET body = body || ' '");
      Files.copy(changing, left);
      Files.copy(Path.of(changing + "-journal"), Path.of(left + "-journal"));
      assertNotEquals(ByteBuffer.wrap(before), ByteBuffer.wrap(Files.readAllBytes(left)));
      sql.execute("ROLLBACK");
    }
  }
}
