package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * A ledger's entries one after the other, up to the head it had when it was opened; what is added
 * meanwhile is left out. Memory does not grow with the ledger.
 */
public final class ChainReader implements AutoCloseable {
  private final String file;
  private final Connection connection;
  private final Head head;

  private ChainReader(String file, Connection connection, Head head) {
    this.file = file;
    this.connection = connection;
    this.head = head;
  }

  /** Takes one entry after the other. */
  @FunctionalInterface
  public interface Taker<X extends Exception> {
    /**
     * Takes an entry.
     *
     * @throws X to stop the reading
     */
    void take(ChainRow row) throws X, LedgerFault;
  }

  /**
   * Opens an existing ledger.
   *
   * @throws LedgerFault if there is none, or it cannot be read
   */
  public static ChainReader open(Path path) throws LedgerFault {
    return open(path, path);
  }

  /**
   * Opens a copy of a ledger.
   *
   * @param original whose faults the copy's are
   * @throws LedgerFault if there is no copy, or it cannot be read
   */
  public static ChainReader open(Path path, Path original) throws LedgerFault {
    String file = original.toString();
    if (!Files.exists(path)) {
      throw new LedgerFault(file + ": there is no such ledger");
    }
    Connection connection = Sqlite.connectToRead(path);
    try {
      Schema.check(connection, file);
      return new ChainReader(file, connection, Head.of(connection));
    } catch (SQLException e) {
      throw Sqlite.closeAfter(connection, Sqlite.fault(file, "read", e));
    } catch (LedgerFault e) {
      throw Sqlite.closeAfter(connection, e);
    }
  }

  /** The number of the last entry, which is how many there are. */
  public long entries() {
    return head.seq();
  }

  /** The last entry's hash. */
  public Bytes headHash() {
    return head.hash();
  }

  /**
   * Reads every entry and follows the chain.
   *
   * @throws LedgerFault at the first entry that does not follow from the one before
   * @throws X what the taker stopped with
   */
  public <X extends Exception> void follow(Taker<X> taker) throws LedgerFault, X {
    String sql = "SELECT seq, body, hash FROM entry WHERE seq <= ? ORDER BY seq";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setLong(1, head.seq());
      Head reached = Head.NONE;
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) {
          ChainRow next = row(row);
          reached = reached.next(next.body());
          if (next.seq() != reached.seq() || !next.hash().equals(reached.hash())) {
            throw broken(reached.seq());
          }
          taker.take(next);
        }
      }
      if (!reached.equals(head)) {
        throw broken(reached.seq() + 1);
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

  private ChainRow row(ResultSet row) throws SQLException, LedgerFault {
    String body = row.getString(2);
    byte[] hash = row.getBytes(3);
    if (body == null || hash == null) {
      throw broken(row.getLong(1));
    }
    return new ChainRow(row.getLong(1), body, Bytes.of(hash));
  }

  private LedgerFault broken(long seq) {
    return new LedgerFault(
        file
            + ": entry "
            + seq
            + " does not follow from the one before: the ledger was altered or damaged; go on with"
            + " a copy kept elsewhere");
  }
}
