package boreledger.station.ledger;

import java.nio.file.Files;
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
  // The lock file is shared memory that needs room on the disk, even of those who only read.
  private static final Set<SQLiteErrorCode> NO_LOCK_FILE =
      EnumSet.of(
          SQLiteErrorCode.SQLITE_IOERR_SHMOPEN,
          SQLiteErrorCode.SQLITE_IOERR_SHMSIZE,
          SQLiteErrorCode.SQLITE_IOERR_SHMMAP);

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
   * <p>On a medium that is full or cannot be written to, SQLite cannot lay its lock files beside a
   * ledger. One without a log beside it then is opened as a file that nobody changes. A change that
   * another program left half done is taken back first, as SQLite does for everybody who may write.
   */
  static Connection connectToRead(Path path) throws LedgerFault {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setBusyTimeout(BUSY_TIMEOUT_MS);
    try {
      return connectAndLook(path, config);
    } catch (SQLException e) {
      if (isHalfDone(e)) {
        return connectToReadAfterTakingBack(path, config);
      }
      LedgerFault fault = fault(path.toString(), "read", e);
      if (!isUnwritable(e) || !Files.isReadable(path)) {
        throw fault;
      }
      if (hasLog(path)) {
        throw new LedgerFault(
            path
                + ": could not read the ledger: its last entries stand in "
                + log(path).getFileName()
                + ", and no lock file can be made beside it; copy both into another folder",
            e);
      }
      return connect("jdbc:sqlite:" + path.toUri() + "?immutable=1", config, path, "read");
    }
  }

  private static Connection connectToReadAfterTakingBack(Path path, SQLiteConfig reading)
      throws LedgerFault {
    SQLiteConfig writing = new SQLiteConfig();
    writing.setBusyTimeout(BUSY_TIMEOUT_MS);
    try {
      connectAndLook(path, writing).close();
      return connectAndLook(path, reading);
    } catch (SQLException e) {
      throw fault(path.toString(), "read", e);
    }
  }

  private static Connection connectAndLook(Path path, SQLiteConfig config)
      throws LedgerFault, SQLException {
    Connection connection = connect(path, config, "read");
    try (Statement statement = connection.createStatement()) {
      statement.executeQuery("SELECT count(*) FROM sqlite_schema").close();
      return connection;
    } catch (SQLException e) {
      throw closeAfter(connection, e);
    }
  }

  /** Closes a connection after a fault, which stays the first thing to tell. */
  static <X extends Exception> X closeAfter(Connection connection, X first) {
    try {
      connection.close();
    } catch (SQLException second) {
      first.addSuppressed(second);
    }
    return first;
  }

  private static Path log(Path path) {
    return Path.of(path + "-wal");
  }

  private static boolean hasLog(Path path) {
    return log(path).toFile().length() > 0;
  }

  private static boolean isHalfDone(SQLException cause) {
    return cause instanceof SQLiteException e
        && e.getResultCode() == SQLiteErrorCode.SQLITE_READONLY_ROLLBACK;
  }

  private static boolean isUnwritable(SQLException cause) {
    return cause instanceof SQLiteException e
        && (UNWRITABLE.contains(primary(e)) || NO_LOCK_FILE.contains(e.getResultCode()));
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
    if (NO_LOCK_FILE.contains(e.getResultCode())) {
      return "there is no room for its lock file; make room on the disk and start again";
    }
    return switch (primary(e)) {
      case SQLITE_BUSY, SQLITE_LOCKED -> "another program is writing to it; close that one first";
      case SQLITE_FULL -> "the disk is full; make room and start again";
      case SQLITE_READONLY -> "the file or its folder may not be written to; check its permissions";
      case SQLITE_CANTOPEN ->
          "the file or its folder is missing or not permitted; check its name and permissions";
      case SQLITE_IOERR -> "the disk did not read or write as asked; check it and start again";
      case SQLITE_NOTADB -> "the file is no ledger; name another file";
      case SQLITE_CORRUPT -> "the file is damaged; go on with a copy kept elsewhere";
      default -> e.getMessage();
    };
  }
}
