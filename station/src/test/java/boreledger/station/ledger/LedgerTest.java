package boreledger.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.SessionEnded;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LedgerTest {
  private static final EntryBody NOTE = new Document("job", "x.job.toml", "00", "text");

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("bench.db");
  }

  @Test
  void commitsGoThroughAWriteAheadLogThatIsSynchronisedInFull() throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      assertEquals(List.of("wal", "2"), ledger.pragmas());
    }
  }

  @Test
  void entriesAreNumberedFromOneAndGoOnAfterReopening() throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      assertEquals(2, ledger.append(NOTE));
      assertEquals(4, ledger.append(List.of(NOTE, NOTE)));
    }
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      assertEquals(5, ledger.append(NOTE));
    }
  }

  @Test
  void everyStoredHashFollowsFromTheStoredBodiesAlone() throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      for (int i = 0; i < 20; i++) {
        ledger.append(new SessionEnded(i, 0.1 * i, Instant.EPOCH.plusNanos(i)));
      }
    }

    try (Connection connection = connect();
        ResultSet row =
            connection.createStatement().executeQuery("SELECT * FROM entry ORDER BY seq")) {
      Bytes hash = Chain.ORIGIN;
      int entries = 0;
      while (row.next()) {
        entries++;
        hash = Chain.link(hash, row.getLong("seq"), row.getString("body"));
        assertEquals(hash, Bytes.of(row.getBytes("hash")));
      }
      assertEquals(21, entries);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE entry SET body = '{}' WHERE seq = 1",
        "DELETE FROM entry WHERE seq = 2",
        "INSERT OR REPLACE INTO entry (seq, body, hash) VALUES (2, '{}', zeroblob(32))",
        "INSERT INTO entry (seq, body, hash) VALUES (9, '{}', zeroblob(32))",
        "INSERT INTO entry (seq, body, hash) VALUES (3, '{}', zeroblob(31))",
        "INSERT INTO entry (seq, body, hash) VALUES (3, NULL, zeroblob(32))"
      })
  void whatIsNoAppendIsRefusedByTheFileItself(String sql) throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      ledger.append(NOTE);
    }

    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      assertThrows(SQLException.class, () -> statement.executeUpdate(sql));
      assertEquals(2, count(connection));
    }
  }

  @Test
  void anAppendAfterAnotherProgramWroteIsRefusedAndLeavesNothing() throws Exception {
    try (Ledger first = Ledger.openOrCreate(file);
        Ledger second = Ledger.openOrCreate(file)) {
      second.append(NOTE);

      LedgerFault fault = assertThrows(LedgerFault.class, () -> first.append(NOTE));

      assertEquals(
          file + ": another program wrote to this ledger; close one of them and start again",
          fault.getMessage());
      assertEquals(3, second.append(NOTE));
    }
  }

  @Test
  void aLockedLedgerIsToldInPlainWordsAndStaysWritable() throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      try (Connection other = connect();
          Statement statement = other.createStatement()) {
        statement.execute("BEGIN IMMEDIATE");
        LedgerFault fault = assertThrows(LedgerFault.class, () -> ledger.append(NOTE));
        assertEquals(
            file
                + ": could not write to the ledger: another program is writing to it; close that"
                + " one first",
            fault.getMessage());
        statement.execute("ROLLBACK");
      }
      assertEquals(2, ledger.append(NOTE));
    }
  }

  @Test
  void aViewSeesWhatIsCommittedWhileTheLedgerIsOpen() throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file);
        LedgerView view = ledger.view()) {
      assertTrue(view.document("00").isEmpty());
      ledger.append(NOTE);
      assertEquals(NOTE, view.document("00").orElseThrow());
      assertEquals(ledger.headHash(), view.headHash());
    }
  }

  @Test
  void aMissingLedgerIsNotMadeByLooking() {
    LedgerFault fault = assertThrows(LedgerFault.class, () -> LedgerView.open(file));

    assertEquals(
        file + ": there is no such ledger; demo, bench, capture and replay make one",
        fault.getMessage());
    assertFalse(Files.exists(file));
  }

  @Test
  void aFileThatIsNoDatabaseIsLeftAsItIs() throws Exception {
    Files.writeString(file, "twelve words of plain text, which no program wrote as a ledger\n");
    byte[] before = Files.readAllBytes(file);

    LedgerFault fault = assertThrows(LedgerFault.class, () -> Ledger.openOrCreate(file));

    assertEquals(
        file + ": could not open the ledger: the file is no ledger; name another file",
        fault.getMessage());
    assertEquals(Bytes.of(before), Bytes.of(Files.readAllBytes(file)));
  }

  @Test
  void anotherProgramsDatabaseIsLeftAsItIs() throws Exception {
    try (Connection connection = connect()) {
      connection.createStatement().executeUpdate("CREATE TABLE mine (x)");
    }

    LedgerFault fault = assertThrows(LedgerFault.class, () -> Ledger.openOrCreate(file));

    assertEquals(file + ": is an SQLite file but no ledger; name another file", fault.getMessage());
  }

  @Test
  void aLedgerInAFolderThatIsNotThereIsRefused() {
    Path nowhere = folder.resolve("nowhere/bench.db");

    LedgerFault fault = assertThrows(LedgerFault.class, () -> Ledger.openOrCreate(nowhere));

    assertTrue(fault.getMessage().startsWith(nowhere + ": could not open the ledger: "));
  }

  @Test
  void twoLedgersDoNotBeginAlike() throws Exception {
    try (Ledger one = Ledger.openOrCreate(file);
        Ledger other = Ledger.openOrCreate(folder.resolve("other.db"))) {
      assertFalse(one.headHash().equals(other.headHash()));
    }
  }

  private Connection connect() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + file);
  }

  private static int count(Connection connection) throws SQLException {
    try (ResultSet row = connection.createStatement().executeQuery("SELECT count(*) FROM entry")) {
      return row.getInt(1);
    }
  }
}
