package boreledger.station.ledger;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The tables and triggers of a ledger file, version 1. */
final class Schema {
  static final int VERSION = 1;

  /** "Bore" in ASCII: marks the file as a ledger in its SQLite header. */
  static final int APPLICATION_ID = 0x426f7265;

  private static final List<String> STATEMENTS =
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
    int version = pragma(connection, "user_version");
    if (version != VERSION) {
      throw new LedgerFault(
          file + ": ledger version " + version + ", this program knows " + VERSION);
    }
  }

  static int pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA " + name)) {
      return row.getInt(1);
    }
  }
}
