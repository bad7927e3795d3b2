package boreledger.station.ledger;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Opening SQLite files, and saying in plain words what went wrong with one. */
final class Sqlite {
  private Sqlite() {}

  static Connection connect(Path path, SQLiteConfig config, String doing) throws LedgerFault {
    try {
      return config.createConnection("jdbc:sqlite:" + path.toAbsolutePath());
    } catch (SQLException e) {
      throw fault(path.toString(), doing, e);
    }
  }

  static LedgerFault fault(String file, String doing, SQLException cause) {
    return new LedgerFault(file + ": could not " + doing + " the ledger: " + reason(cause), cause);
  }

  private static String reason(SQLException cause) {
    if (!(cause instanceof SQLiteException e)) {
      return cause.getMessage();
    }
    SQLiteErrorCode code = e.getResultCode();
    return switch (code) {
      case SQLITE_BUSY, SQLITE_LOCKED -> "another program is writing to it; close that one first";
      case SQLITE_FULL -> "the disk is full; make room and start again";
      case SQLITE_READONLY -> "the file or its folder may not be written to; check its permissions";
      case SQLITE_CANTOPEN -> "the file or its folder is missing or not permitted";
      case SQLITE_NOTADB -> "the file is no ledger; name another file";
      case SQLITE_CORRUPT -> "the file is damaged; go on with a copy kept elsewhere";
      default -> e.getMessage();
    };
  }
}
