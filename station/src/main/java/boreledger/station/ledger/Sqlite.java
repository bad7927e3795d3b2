package boreledger.station.ledger;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumSet;
import java.util.Set;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Opening SQLite files, and saying in plain words what went wrong with one. */
final class Sqlite {
  static final int BUSY_TIMEOUT_MS = 2000;

  // SQLite's extended result codes carry the plain one in their lowest byte.
  private static final int PRIMARY_CODE = 0xff;
  private static final Set<SQLiteErrorCode> UNWRITABLE =
      EnumSet.of(SQLiteErrorCode.SQLITE_CANTOPEN, SQLiteErrorCode.SQLITE_READONLY);

  private Sqlite() {}

  static Connection connect(Path path, SQLiteConfig config, String doing) throws LedgerFault {
    return connect("jdbc:sqlite:" + path.toAbsolutePath(), config, path, doing);
  }

  private static Connection connect(String url, SQLiteConfig config, Path path, String doing)
      throws LedgerFault {
    try {
      return config.createConnection(url);
    } catch (SQLException e) {
      throw fault(path.toString(), doing, e);
    }
  }

  /**
   * Opens a file that must be there, for reading only.
   *
   * <p>On a medium that cannot be written to, SQLite cannot lay its lock files beside a ledger. One
   * without a log beside it then is opened as a file that nobody changes.
   */
  static Connection connectToRead(Path path) throws LedgerFault {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setBusyTimeout(BUSY_TIMEOUT_MS);
    Connection connection = connect(path, config, "read");
    try (Statement statement = connection.createStatement()) {
      statement.executeQuery("SELECT count(*) FROM sqlite_schema").close();
      return connection;
    } catch (SQLException e) {
      LedgerFault fault = closeAfter(connection, fault(path.toString(), "read", e));
      if (!isUnwritable(e) || hasLog(path)) {
        throw fault;
      }
      return connect("jdbc:sqlite:" + path.toUri() + "?immutable=1", config, path, "read");
    }
  }

  /** Closes a connection after a fault, which stays the first thing to tell. */
  static LedgerFault closeAfter(Connection connection, LedgerFault first) {
    try {
      connection.close();
    } catch (SQLException second) {
      first.addSuppressed(second);
    }
    return first;
  }

  private static boolean hasLog(Path path) {
    return Path.of(path + "-wal").toFile().length() > 0;
  }

  private static boolean isUnwritable(SQLException cause) {
    return cause instanceof SQLiteException e && UNWRITABLE.contains(primary(e));
  }

  static LedgerFault fault(String file, String doing, SQLException cause) {
    return new LedgerFault(file + ": could not " + doing + " the ledger: " + reason(cause), cause);
  }

  private static SQLiteErrorCode primary(SQLiteException e) {
    return SQLiteErrorCode.getErrorCode(e.getResultCode().code & PRIMARY_CODE);
  }

  private static String reason(SQLException cause) {
    if (!(cause instanceof SQLiteException e)) {
      return cause.getMessage();
    }
    return switch (primary(e)) {
      case SQLITE_BUSY, SQLITE_LOCKED -> "another program is writing to it; close that one first";
      case SQLITE_FULL -> "the disk is full; make room and start again";
      case SQLITE_READONLY -> "the file or its folder may not be written to; check its permissions";
      case SQLITE_CANTOPEN -> "the file or its folder is missing or not permitted";
      case SQLITE_IOERR -> "the disk did not read or write as asked; check it and start again";
      case SQLITE_NOTADB -> "the file is no ledger; name another file";
      case SQLITE_CORRUPT -> "the file is damaged; go on with a copy kept elsewhere";
      default -> e.getMessage();
    };
  }
}
