package boreledger.station.ledger;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.concurrent.CancellationException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * Copies a ledger as it is at one moment, every row as it is stored, while programs may go on
 * writing to it.
 */
public final class LedgerCopy {
  private final Path from;
  private PreparedStatement running;
  private boolean stopped;

  /** A copy of this ledger. */
  public LedgerCopy(Path from) {
    this.from = from;
  }

  /**
   * Makes the copy, in a file in which nothing stands yet.
   *
   * @throws LedgerFault if there is no such ledger, or it cannot be read or the copy not written
   * @throws CancellationException if it was stopped; what was written is of no use then
   */
  public void make(Path to) throws LedgerFault {
    if (!Files.exists(from)) {
      throw new LedgerFault(from + ": there is no such ledger");
    }
    try (Connection connection = Sqlite.connectToRead(from)) {
      Schema.check(connection, from.toString());
      // One statement reads one moment's state, and takes no lock that a writer would wait for.
      try (PreparedStatement copying = connection.prepareStatement("VACUUM INTO ?")) {
        copying.setString(1, to.toAbsolutePath().toString());
        begin(copying);
        copying.execute();
      } finally {
        begin(null);
      }
    } catch (SQLException e) {
      if (isInterrupt(e)) {
        throw new CancellationException("the copy was stopped");
      }
      throw Sqlite.fault(from.toString(), "copy", e);
    }
  }

  /** Stops the copying soon. Any thread may ask for it. */
  public synchronized void stop() {
    stopped = true;
    if (running != null) {
      try {
        running.cancel();
      } catch (SQLException e) {
        throw new IllegalStateException("SQLite can always be interrupted", e);
      }
    }
  }

  private synchronized void begin(PreparedStatement copying) {
    running = copying;
    if (copying != null && stopped) {
      throw new CancellationException("the copy was stopped");
    }
  }

  private static boolean isInterrupt(SQLException e) {
    return e instanceof SQLiteException sqlite
        && sqlite.getResultCode() == SQLiteErrorCode.SQLITE_INTERRUPT;
  }
}
