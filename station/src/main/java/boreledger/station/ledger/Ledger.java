package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.sqlite.SQLiteConfig;

/**
 * The ledger, open for writing. One thread uses it; one program writes to a file at a time.
 *
 * <p>When {@link #append} has returned, the entries are on the disk. When it throws, none of them
 * is in the ledger.
 */
public final class Ledger implements AutoCloseable {
  private final String file;
  private final Connection connection;
  private Head head;

  private Ledger(String file, Connection connection) {
    this.file = file;
    this.connection = connection;
  }

  /**
   * Opens a ledger, making it when there is no file yet, or one in which nothing stands yet, such
   * as the making of a ledger leaves when it is cut short.
   *
   * @throws LedgerFault if the file is no ledger, or cannot be read or written
   */
  public static Ledger openOrCreate(Path path) throws LedgerFault {
    String file = path.toString();
    Connection connection = Sqlite.connect(path, writing(), "open");
    Ledger ledger = new Ledger(file, connection);
    try {
      if (Schema.isMissing(connection)) {
        ledger.create();
      } else {
        Schema.check(connection, file);
        ledger.head = Head.of(connection);
      }
      return ledger;
    } catch (SQLException e) {
      throw Sqlite.closeAfter(connection, Sqlite.fault(file, "open", e));
    } catch (LedgerFault fault) {
      throw Sqlite.closeAfter(connection, fault);
    }
  }

  /**
   * Opens a ledger that must be there.
   *
   * @throws LedgerFault if there is none, or it cannot be read or written
   */
  public static Ledger open(Path path) throws LedgerFault {
    LedgerView.open(path).close();
    return openOrCreate(path);
  }

  /** Whether this is the ledger of a file. May be asked from any thread. */
  public boolean isAt(Path path) {
    try {
      return Files.isSameFile(Path.of(file), path);
    } catch (IOException e) {
      // A file that is not there is not this one, which is open.
      return false;
    }
  }

  /** A read-only view of the same file, on a connection of its own. */
  public LedgerView view() throws LedgerFault {
    return LedgerView.open(Path.of(file));
  }

  /** The last entry's number. */
  public long headSeq() {
    return head.seq();
  }

  /** The last entry's hash. */
  public Bytes headHash() {
    return head.hash();
  }

  /**
   * Adds one entry.
   *
   * @return its number
   */
  public long append(EntryBody body) throws LedgerFault {
    return append(List.of(body));
  }

  /**
   * Adds entries, all or none.
   *
   * @return the number of the last one
   * @throws LedgerFault if they could not be made durable, or another program has written meanwhile
   */
  public long append(List<EntryBody> bodies) throws LedgerFault {
    return appendAll(adding -> adding.addAll(bodies));
  }

  /** What is to be added, told one entry after the other so that it need not fit into memory. */
  @FunctionalInterface
  public interface Writing<X extends Exception> {
    /**
     * Tells every entry.
     *
     * @throws X if there is nothing to add after all
     */
    void to(Adding adding) throws X, LedgerFault;
  }

  /** Takes entries within one transaction. */
  public interface Adding {
    /** Takes one more entry. */
    void add(EntryBody body) throws LedgerFault;

    /** Takes some more entries. */
    default void addAll(List<EntryBody> bodies) throws LedgerFault {
      for (EntryBody body : bodies) {
        add(body);
      }
    }
  }

  /**
   * Adds entries as they are told, all or none.
   *
   * @return the number of the last one
   * @throws LedgerFault if they could not be made durable, or another program has written meanwhile
   * @throws X what the telling was given up with; nothing was added then
   */
  public <X extends Exception> long appendAll(Writing<X> writing) throws LedgerFault, X {
    try {
      begin();
      Head next;
      try {
        if (!head.equals(Head.of(connection))) {
          throw new LedgerFault(
              file + ": another program wrote to this ledger; close one of them and start again");
        }
        Growing growing = new Growing(head);
        writing.to(growing);
        next = growing.reached;
        execute("COMMIT");
      } catch (Exception e) {
        rollbackAfter(e);
        throw e;
      }
      head = next;
      return next.seq();
    } catch (SQLException e) {
      throw Sqlite.fault(file, "write to", e);
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

  private void create() throws SQLException, LedgerFault {
    begin();
    try {
      Schema.create(connection);
      byte[] id = new byte[16];
      new SecureRandom().nextBytes(id);
      head =
          insert(
              Head.NONE,
              EntryJson.write(
                  new EntryBody.LedgerMade(
                      EntryBody.FORMAT, HexFormat.of().formatHex(id), Instant.now())));
      execute("COMMIT");
    } catch (SQLException e) {
      rollbackAfter(e);
      throw e;
    }
  }

  /** The chain while a transaction makes it longer. */
  private final class Growing implements Adding {
    private Head reached;

    Growing(Head from) {
      reached = from;
    }

    @Override
    public void add(EntryBody body) throws LedgerFault {
      try {
        reached = insert(reached, EntryJson.write(body));
      } catch (SQLException e) {
        throw Sqlite.fault(file, "write to", e);
      }
    }
  }

  private Head insert(Head before, String body) throws SQLException {
    Head after = before.next(body);
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT INTO entry (seq, body, hash) VALUES (?, ?, ?)")) {
      insert.setLong(1, after.seq());
      insert.setString(2, body);
      insert.setBytes(3, after.hash().toArray());
      insert.executeUpdate();
    }
    return after;
  }

  // The lock is taken when the transaction begins: two writers meet at the door, not midway.
  private void begin() throws SQLException {
    execute("BEGIN IMMEDIATE");
  }

  private void execute(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private void rollbackAfter(Exception first) {
    try {
      execute("ROLLBACK");
    } catch (SQLException second) {
      first.addSuppressed(second);
    }
  }

  private static SQLiteConfig writing() {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setBusyTimeout(Sqlite.BUSY_TIMEOUT_MS);
    return config;
  }

  List<String> pragmas() throws SQLException {
    List<String> values = new ArrayList<>();
    try (var statement = connection.createStatement()) {
      for (String name : List.of("journal_mode", "synchronous")) {
        try (var row = statement.executeQuery("PRAGMA " + name)) {
          values.add(row.getString(1));
        }
      }
    }
    return values;
  }
}
