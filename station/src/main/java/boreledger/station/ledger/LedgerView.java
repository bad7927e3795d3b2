package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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
    List<Entry> entries = new ArrayList<>();
    eachOfSession(session, entries::add);
    return List.copyOf(entries);
  }

  /** The same one after the other, so that a session need not fit into memory. */
  public void eachOfSession(long session, Consumer<Entry> taker) throws LedgerFault {
    ImportedReading reading = new ImportedReading(imports());
    each(entry -> taker.accept(reading.of(entry)), "WHERE session = ?", session);
  }

  /**
   * What was amended of sessions that were opened in this ledger, oldest first. It is little, and
   * found without reading the sessions.
   */
  public List<Entry> amendments() throws LedgerFault {
    return query("WHERE kind = 'amended'");
  }

  /** What was amended of a session that came from another ledger, oldest first. */
  public List<Entry> importedAmendments(long session) throws LedgerFault {
    // Finding the word is quicker by far than reading the JSON of every entry of a session.
    return readable(
        query(
            "WHERE session = ? AND instr(body, 'amended') > 0 AND +kind = 'imported-entry'"
                + " AND json_extract(json_extract(body, '$.body'), '$.kind') = 'amended'",
            session));
  }

  /** What was said of filing in this ledger's own sessions, oldest first; it is little likewise. */
  public List<Entry> filings() throws LedgerFault {
    return query("WHERE kind IN ('filed', 'withdrawn')");
  }

  /** What was said of filing in a session that came from another ledger, oldest first. */
  public List<Entry> importedFilings(long session) throws LedgerFault {
    return readable(
        query(
            "WHERE session = ? AND +kind = 'imported-entry' AND"
                + " json_extract(json_extract(body, '$.body'), '$.kind') IN ('filed', 'withdrawn')",
            session));
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
   * The id of the ledger that an entry came from.
   *
   * @throws LedgerFault if the entry belongs to no import
   */
  public String importedLedger(EntryBody.ImportedEntry entry) throws LedgerFault {
    return entry(entry.imported())
        .flatMap(
            opening ->
                opening.body() instanceof EntryBody.Imported imported
                    ? Optional.of(imported.ledger())
                    : Optional.empty())
        .orElseThrow(
            () -> new LedgerFault(file + ": entry " + entry.imported() + " opens no import"));
  }

  /**
   * The latest session openings before an entry in the order they came into this ledger, oldest
   * first.
   *
   * @param most how many at most
   */
  public List<Entry> sessionsBefore(long seq, int most) throws LedgerFault {
    List<Entry> own =
        query(
            "WHERE seq IN (SELECT seq FROM entry WHERE kind = 'session' AND seq < ?"
                + " ORDER BY seq DESC LIMIT ?)",
            seq,
            most);
    if (imports().isEmpty()) {
      return own;
    }
    List<Entry> all =
        new ArrayList<>(
            imported(
                "AND json_extract(json_extract(body, '$.body'), '$.kind') = 'session'"
                    + " AND seq < ?",
                seq));
    all.addAll(own);
    all.sort(Comparator.comparingLong(Entry::seq));
    return List.copyOf(all.subList(Math.max(0, all.size() - most), all.size()));
  }

  /**
   * The last that was said in a session after its opening and before an entry, oldest first.
   *
   * @param most how many entries at most
   */
  public List<Entry> ofSessionBefore(long session, long seq, int most) throws LedgerFault {
    return readable(
        query(
            "WHERE seq IN (SELECT seq FROM entry WHERE session = ? AND seq < ?"
                + " ORDER BY seq DESC LIMIT ?)",
            session,
            seq,
            most));
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
    List<Entry> entries = new ArrayList<>();
    each(entries::add, where, values);
    return List.copyOf(entries);
  }

  /** Takes one entry after the other. */
  @FunctionalInterface
  private interface Taker {
    void take(Entry entry) throws LedgerFault;
  }

  private void each(Taker taker, String where, Object... values) throws LedgerFault {
    String sql = "SELECT seq, body, hash FROM entry " + where + " ORDER BY seq";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) {
          long seq = row.getLong(1);
          EntryBody body = EntryJson.read(seq, row.getString(2));
          taker.take(new Entry(seq, body, Bytes.of(row.getBytes(3))));
        }
      }
    } catch (SQLException e) {
      throw Sqlite.fault(file, "read", e);
    }
  }
}
