package boreledger.station.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Puts a ledger's file aside under another name, its log with it. */
public final class LedgerAside {
  private static final Set<SQLiteErrorCode> IN_USE =
      EnumSet.of(SQLiteErrorCode.SQLITE_BUSY, SQLiteErrorCode.SQLITE_LOCKED);

  private LedgerAside() {}

  /**
   * Gives a ledger another name. A damaged one is put aside as it is.
   *
   * @throws LedgerFault if a program has it open, or it could not be renamed
   */
  public static void move(Path ledger, Path to) throws LedgerFault {
    foldLog(ledger);
    try {
      // The log goes first: a ledger without it lacks only what the log holds, but a log without
      // its ledger would be taken for that of the file that comes in its place.
      for (String suffix : List.of("-wal", "-shm", "")) {
        Path part = Path.of(ledger + suffix);
        if (Files.exists(part)) {
          Files.move(part, Path.of(to + suffix));
        }
      }
    } catch (IOException e) {
      throw new LedgerFault(ledger + ": could not be put aside as " + to + ": " + e, e);
    }
  }

  /** Leaving the write-ahead log needs the file for oneself: so this also tells who has it open. */
  private static void foldLog(Path ledger) throws LedgerFault {
    try (Connection connection = Sqlite.connect(ledger, new SQLiteConfig(), "open");
        Statement statement = connection.createStatement();
        ResultSet mode = statement.executeQuery("PRAGMA journal_mode = DELETE")) {
      if (mode.next() && "wal".equals(mode.getString(1))) {
        throw inUse(ledger, null);
      }
    } catch (SQLException e) {
      if (e instanceof SQLiteException sqlite && IN_USE.contains(sqlite.getResultCode())) {
        throw inUse(ledger, e);
      }
    }
  }

  private static LedgerFault inUse(Path ledger, SQLException cause) {
    return new LedgerFault(ledger + ": a program has this ledger open; close it first", cause);
  }
}
