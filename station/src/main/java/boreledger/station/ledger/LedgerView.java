package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The ledger, open for reading only. It sees what was committed before each question. */
public final class LedgerView implements AutoCloseable {
  static final String NO_SUCH_LEDGER =
      ": there is no such ledger; demo, bench, capture and replay make one";
  static final String NOTHING_YET =
      ": nothing stands in this file yet; demo, bench, capture and replay begin a ledger in it";

  private final String file;
  private final Connection connection;

  private LedgerView(String file, Connection connection) {
    this.file = file;
    this.connection = connection;
  }

  /**
   * Opens an existing ledger.
   *
   * @throws LedgerFault if there is none, or it cannot be read
   */
  public static LedgerView open(Path path) throws LedgerFault {
    String none = Files.exists(path) ? NOTHING_YET : NO_SUCH_LEDGER;
    return openIfAny(path).orElseThrow(() -> new LedgerFault(path + none));
  }

  /**
   * Opens a ledger if something stands in it.
   *
   * @return empty when there is no file, or nothing in it yet
   */
  public static Optional<LedgerView> openIfAny(Path path) throws LedgerFault {
    if (!Files.exists(path)) {
      return Optional.empty();
    }
    LedgerView view = new LedgerView(path.toString(), Sqlite.connectToRead(path));
    try {
      if (Schema.isMissing(view.connection)) {
        view.close();
        return Optional.empty();
      }
      Schema.check(view.connection, view.file);
      return Optional.of(view);
    } catch (SQLException e) {
      throw Sqlite.closeAfter(view.connection, Sqlite.fault(view.file, "read", e));
    } catch (LedgerFault e) {
      throw Sqlite.closeAfter(view.connection, e);
    }
  }

  /** The last entry's hash. */
  public Bytes headHash() throws LedgerFault {
    try {
      return Head.of(connection).hash();
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }

  /**
   * The ledger's id, which its first entry has.
   *
   * @throws LedgerFault if it does not begin as a ledger
   */
  public String id() throws LedgerFault {
    return query("WHERE seq = 1").stream()
        .flatMap(
            entry ->
                entry.body() instanceof EntryBody.LedgerMade made
                    ? Stream.of(made.id())
                    : Stream.empty())
        .findFirst()
        .orElseThrow(() -> new LedgerFault(file + ": does not begin as a ledger does"));
  }

  /** An entry by its number. */
  public Optional<Entry> entry(long seq) throws LedgerFault {
    return query("WHERE seq = ?", seq).stream().findFirst();
  }

  /** All session openings, oldest first. */
  public List<Entry> sessions() throws LedgerFault {
    return query("WHERE kind = 'session'");
  }

  /** All seals, oldest first. */
  public List<Entry> seals() throws LedgerFault {
    return query("WHERE kind = 'seal'");
  }

  /** Everything said in a session after its opening, oldest first. */
  public List<Entry> ofSession(long session) throws LedgerFault {
    return query("WHERE session = ?", session);
  }

  /** A kept file by its content hash. */
  public Optional<EntryBody.Document> document(String sha256) throws LedgerFault {
    return query("WHERE kind = 'document' AND json_extract(body, '$.sha256') = ?", sha256).stream()
        .map(entry -> (EntryBody.Document) entry.body())
        .findFirst();
  }

  @Override
  public void close() throws LedgerFault {
    try {
      connection.close();
    } catch (SQLException e) {
      throw Sqlite.fault(file, "close", e);
    }
  }

  private List<Entry> query(String where, Object... values) throws LedgerFault {
    String sql = "SELECT seq, body, hash FROM entry " + where + " ORDER BY seq";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      List<Entry> entries = new ArrayList<>();
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) {
          long seq = row.getLong(1);
          EntryBody body = EntryJson.read(seq, row.getString(2));
          entries.add(new Entry(seq, body, Bytes.of(row.getBytes(3))));
        }
      }
      return List.copyOf(entries);
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }
}
