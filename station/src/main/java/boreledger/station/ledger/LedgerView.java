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

  /** How many entries there are. */
  public long entries() throws LedgerFault {
    try {
      return Head.of(connection).seq();
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }

  /** An entry by its number. */
  public Optional<Entry> entry(long seq) throws LedgerFault {
    return query("WHERE seq = ?", seq).stream().findFirst();
  }

  /**
   * All session openings, oldest first. One from another ledger has the number it has here, and its
   * place among the others by the clock on the wall.
   */
  public List<Entry> sessions() throws LedgerFault {
    List<Entry> imported =
        imported("AND json_extract(json_extract(body, '$.body'), '$.kind') = 'session'");
    return SessionOrder.merged(query("WHERE kind = 'session'"), imported);
  }

  /** All seals, oldest first. */
  public List<Entry> seals() throws LedgerFault {
    return query("WHERE kind = 'seal'");
  }

  /** Everything said in a session after its opening, oldest first. */
  public List<Entry> ofSession(long session) throws LedgerFault {
    return readable(query("WHERE session = ?", session));
  }

  /** A kept file by its content hash. */
  public Optional<EntryBody.Document> document(String sha256) throws LedgerFault {
    List<Entry> kept =
        query("WHERE kind = 'document' AND json_extract(body, '$.sha256') = ?", sha256);
    if (kept.isEmpty()) {
      kept =
          imported(
              "AND json_extract(json_extract(body, '$.body'), '$.kind') = 'document'"
                  + " AND json_extract(json_extract(body, '$.body'), '$.sha256') = ?",
              sha256);
    }
    return kept.stream().map(entry -> (EntryBody.Document) entry.body()).findFirst();
  }

  /** The entries that open imports, oldest first. */
  public List<Entry> imports() throws LedgerFault {
    return query("WHERE kind = 'imported'");
  }

  /** Whether an entry came from another ledger. */
  public boolean isImported(long seq) throws LedgerFault {
    return entry(seq).map(entry -> entry.body() instanceof EntryBody.ImportedEntry).orElse(false);
  }

  /**
   * The latest session openings before an entry, oldest first.
   *
   * @param most how many at most
   */
  public List<Entry> sessionsBefore(long seq, int most) throws LedgerFault {
    return query(
        "WHERE seq IN (SELECT seq FROM entry WHERE kind = 'session' AND seq < ?"
            + " ORDER BY seq DESC LIMIT ?)",
        seq,
        most);
  }

  /**
   * The last that was said in a session after its opening and before an entry, oldest first.
   *
   * @param most how many entries at most
   */
  public List<Entry> ofSessionBefore(long session, long seq, int most) throws LedgerFault {
    return query(
        "WHERE seq IN (SELECT seq FROM entry WHERE session = ? AND seq < ?"
            + " ORDER BY seq DESC LIMIT ?)",
        session,
        seq,
        most);
  }

  /** How many entries were said in a session after its opening. */
  public long countOfSession(long session) throws LedgerFault {
    String sql = "SELECT count(*) FROM entry WHERE session = ?";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setLong(1, session);
      try (ResultSet row = statement.executeQuery()) {
        return row.getLong(1);
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

  // What belongs to no session is little, and the index finds it; the plus keeps SQLite from going
  // by the kind instead, through every imported entry.
  private List<Entry> imported(String and, Object... values) throws LedgerFault {
    String where = "WHERE session IS NULL AND +kind = 'imported-entry' " + and;
    return readable(query(where, values));
  }

  private List<Entry> readable(List<Entry> entries) throws LedgerFault {
    if (entries.stream().noneMatch(entry -> entry.body() instanceof EntryBody.ImportedEntry)) {
      return entries;
    }
    ImportedReading reading = new ImportedReading(imports());
    List<Entry> readable = new ArrayList<>();
    for (Entry entry : entries) {
      readable.add(reading.of(entry));
    }
    return List.copyOf(readable);
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
