package boreledger.station.ledger;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The tables and triggers of a ledger file, version 1. */
final class Schema {
  static final int VERSION = 1;

  /** "Bore" in ASCII: marks the file as a ledger in its SQLite header. */
  static final int APPLICATION_ID = 0x426f7265;

  static final List<String> STATEMENTS =
      List.of(
          """
          CREATE TABLE entry (
            seq INTEGER PRIMARY KEY CHECK (seq > 0),
            body TEXT NOT NULL,
            hash BLOB NOT NULL CHECK (length(hash) = 32),
            kind TEXT GENERATED ALWAYS AS (json_extract(body, '$.kind')) VIRTUAL,
            session INTEGER GENERATED ALWAYS AS (json_extract(body, '$.session')) VIRTUAL
          ) STRICT
          """,
          "CREATE INDEX entry_kind ON entry (kind)",
          "CREATE INDEX entry_session ON entry (session)",
          // A REPLACE would delete without asking a DELETE trigger: so only the next number goes
          // in.
          """
          CREATE TRIGGER entry_only_the_next BEFORE INSERT ON entry
          WHEN NEW.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM entry)
          BEGIN SELECT RAISE(ABORT, 'the ledger takes only the next entry'); END
          """,
          """
          CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry
          BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END
          """,
          """
          CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry
          BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END
          """,
          "PRAGMA application_id = " + APPLICATION_ID,
          "PRAGMA user_version = " + VERSION);

  private Schema() {}

  static void create(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String sql : STATEMENTS) {
        statement.executeUpdate(sql);
      }
    }
  }

  /** Whether nothing at all stands in the file yet. */
  static boolean isMissing(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT count(*) FROM sqlite_schema")) {
      return row.getInt(1) == 0 && pragma(connection, "application_id") == 0;
    }
  }

  /** Refuses a file that is no ledger, or one of a version that this program does not know. */
  static void check(Connection connection, String file) throws SQLException, LedgerFault {
    if (pragma(connection, "application_id") != APPLICATION_ID) {
      throw new LedgerFault(file + ": is an SQLite file but no ledger; name another file");
    }
    checkNotNewer(connection, file);
    int version = pragma(connection, "user_version");
    if (version != VERSION) {
      throw new LedgerFault(
          file
              + ": ledger version "
              + version
              + ", which no program writes; go on with a copy kept elsewhere");
    }
  }

  /** Refuses a ledger of which this program cannot know what it must be like. */
  static void checkNotNewer(Connection connection, String file) throws SQLException, LedgerFault {
    int version = pragma(connection, "user_version");
    if (version > VERSION) {
      throw new LedgerFault(
          file
              + ": ledger version "
              + version
              + ", this program knows "
              + VERSION
              + "; use the newer program that wrote it");
    }
  }

  static int pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA " + name)) {
      return row.getInt(1);
    }
  }

  /** What is in the file's layout that must not be, or is missing; empty when all is as it must. */
  static List<String> faults(Connection connection) throws SQLException {
    List<String> faults = new ArrayList<>();
    try (Connection pattern = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      create(pattern);
      Map<String, String> expected = parts(pattern);
      Map<String, String> found = parts(connection);
      expected.forEach((part, sql) -> compare(part, sql, found.get(part), faults));
      found.keySet().stream()
          .filter(part -> !expected.containsKey(part))
          .forEach(part -> faults.add(part + " does not belong into a ledger"));
      for (String name : List.of("application_id", "user_version")) {
        int is = pragma(connection, name);
        int mustBe = pragma(pattern, name);
        if (is != mustBe) {
          faults.add(name + " is " + is + ", must be " + mustBe);
        }
      }
    }
    return faults;
  }

  private static void compare(String part, String expected, String found, List<String> faults) {
    if (found == null) {
      faults.add(part + " is missing");
    } else if (!found.equals(expected)) {
      faults.add(part + " is not as a ledger's must be");
    }
  }

  /** Tables, indices, triggers and views, each with the words that made it. */
  private static Map<String, String> parts(Connection connection) throws SQLException {
    Map<String, String> parts = new TreeMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery("SELECT type, name, tbl_name, sql FROM sqlite_schema")) {
      while (row.next()) {
        parts.put(
            row.getString(1) + " " + row.getString(2), row.getString(3) + ": " + row.getString(4));
      }
    }
    return parts;
  }
}
