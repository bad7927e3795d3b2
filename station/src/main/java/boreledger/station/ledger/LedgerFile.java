package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A ledger file as it is stored, for whoever checks it: nothing in it is believed. Everything is
 * read from one moment's state, even while a program writes to it.
 */
public final class LedgerFile implements AutoCloseable {
  private static final String ROWS =
      "SELECT seq, CAST(body AS BLOB), CAST(hash AS BLOB) FROM entry ";

  private final String file;
  private final Connection connection;

  private LedgerFile(String file, Connection connection) {
    this.file = file;
    this.connection = connection;
  }

  /** Takes one row after the other. */
  @FunctionalInterface
  public interface RowReader {
    /**
     * Takes a row.
     *
     * @return whether to go on
     */
    boolean accept(StoredRow row) throws LedgerFault;
  }

  /**
   * Opens a file in which there is a table of entries.
   *
   * @throws LedgerFault if there is no file, it is no SQLite file, holds no such table, or is of a
   *     version that this program does not know yet
   */
  public static LedgerFile open(Path path) throws LedgerFault {
    if (!Files.exists(path)) {
      throw new LedgerFault(path + LedgerView.NO_SUCH_LEDGER);
    }
    LedgerFile opened = new LedgerFile(path.toString(), Sqlite.connectToRead(path));
    try (Statement statement = opened.connection.createStatement()) {
      statement.execute("BEGIN");
      if (Schema.isMissing(opened.connection)) {
        throw new LedgerFault(path + LedgerView.NOTHING_YET);
      }
      try (ResultSet row =
          statement.executeQuery("SELECT count(*) FROM sqlite_schema WHERE name = 'entry'")) {
        if (row.getInt(1) == 0) {
          throw new LedgerFault(path + ": is an SQLite file but no ledger; name another file");
        }
      }
      Schema.checkNotNewer(opened.connection, opened.file);
      return opened;
    } catch (SQLException e) {
      throw Sqlite.closeAfter(opened.connection, Sqlite.fault(opened.file, "read", e));
    } catch (LedgerFault e) {
      throw Sqlite.closeAfter(opened.connection, e);
    }
  }

  /** What is wrong with the tables, indices, triggers and marks of the file. */
  public List<String> schemaFaults() throws LedgerFault {
    try {
      return Schema.faults(connection);
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }

  /** What SQLite itself finds wrong with the file, in its words. */
  public List<String> integrityFaults() throws LedgerFault {
    List<String> faults = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA integrity_check")) {
      while (row.next()) {
        faults.add(row.getString(1));
      }
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
    return faults.equals(List.of("ok")) ? List.of() : faults;
  }

  /** How many rows there are. */
  public long count() throws LedgerFault {
    // The unary plus keeps SQLite from counting an index, which is not what is checked.
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT count(+seq) FROM entry NOT INDEXED")) {
      return row.getLong(1);
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }

  /** All rows in the order of their numbers, one after the other. */
  public void rows(RowReader reader) throws LedgerFault {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(ROWS + "NOT INDEXED ORDER BY seq")) {
      boolean goOn = true;
      while (goOn && row.next()) {
        goOn = reader.accept(row(row));
      }
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }

  /** One row by its number. */
  public Optional<StoredRow> row(long seq) throws LedgerFault {
    try (PreparedStatement statement = connection.prepareStatement(ROWS + "WHERE seq = ?")) {
      statement.setLong(1, seq);
      try (ResultSet row = statement.executeQuery()) {
        return row.next() ? Optional.of(row(row)) : Optional.empty();
      }
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }

  @Override
  public void close() throws LedgerFault {
    try {
      connection.close();
    } catch (SQLException e) {
      throw Sqlite.fault(file, "close", e);
    }
  }

  private static StoredRow row(ResultSet row) throws SQLException {
    return new StoredRow(row.getLong(1), bytes(row.getBytes(2)), bytes(row.getBytes(3)));
  }

  private static Bytes bytes(byte[] stored) {
    return stored == null ? Bytes.EMPTY : Bytes.of(stored);
  }
}
