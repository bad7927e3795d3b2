package boreledger.station.audit;

import boreledger.drivers.line.Bytes;
import boreledger.station.app.BenchFolder;
import boreledger.station.app.Replay;
import boreledger.station.ledger.Chain;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerFile;
import boreledger.station.ledger.StoredRow;
import boreledger.station.seal.Seal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A ledger of the small engine's bores and gaps, and hands that tamper with it.
 *
 * <p>Entries: 1 ledger, 2 job, 3 gauge, 4 to 6 tables, 7 session, 8 opening check, 9 to 12 bores,
 * 13 closing check, 14 ended, 15 gauge, 16 session, 17 and 18 gaps, 19 ended.
 */
public final class AuditedLedger {
  /** The first bore reading. */
  public static final long BORE = 9;

  /** The last entry. */
  public static final long LAST = 19;

  /** After all that tests say was done. */
  private static final Instant EVENING = Instant.parse("2031-05-06T20:00:00Z");

  private final Path file;

  private AuditedLedger(Path file) {
    this.file = file;
  }

  /** Gauges the small engine. */
  public static AuditedLedger gauged(Path folder) {
    BenchFolder bench = new BenchFolder(folder);
    try {
      Replay.prepare(
              bench.job(),
              List.of(bench.bores(BenchFolder.BORES), bench.gaps(BenchFolder.GAPS)),
              null)
          .into(bench.ledger(), event -> {});
    } catch (Exception e) {
      throw new AssertionError(e);
    }
    return new AuditedLedger(bench.ledger());
  }

  /** Gauges the invented engine of the sample captures, as the demo does. */
  static AuditedLedger demo(Path folder) {
    Path samples = Path.of(System.getProperty("basedir", "."), "..", "sample-captures");
    List<Path> captures =
        List.of("bore-rocked.capture.jsonl", "gap-top.capture.jsonl", "gap-second.capture.jsonl")
            .stream()
            .map(samples::resolve)
            .toList();
    Path file = folder.resolve("demo.db");
    try {
      Replay.prepare(samples.resolve("pumphouse-three.job.toml"), captures, null)
          .into(file, event -> {});
    } catch (Exception e) {
      throw new AssertionError(e);
    }
    return new AuditedLedger(file);
  }

  /** A ledger that is there already. */
  public static AuditedLedger at(Path file) {
    return new AuditedLedger(file);
  }

  /** Its file. */
  public Path file() {
    return file;
  }

  AuditReport audit() {
    return audit(Map.of(), Set.of());
  }

  AuditReport audit(Map<String, Seal> seals, Set<Bytes> known) {
    return audit(seals, known, EVENING);
  }

  AuditReport audit(Map<String, Seal> seals, Set<Bytes> known, Instant now) {
    try {
      return LedgerAudit.of(file, seals, known, (entries, of) -> true, now);
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  /** Does something to the file with its triggers taken off, and puts them back. */
  public AuditedLedger tampered(String... statements) {
    try (Connection connection = connect();
        Statement sql = connection.createStatement()) {
      List<String> triggers = new ArrayList<>();
      List<String> names = new ArrayList<>();
      try (ResultSet row =
          sql.executeQuery("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")) {
        while (row.next()) {
          names.add(row.getString(1));
          triggers.add(row.getString(2));
        }
      }
      for (String name : names) {
        sql.executeUpdate("DROP TRIGGER " + name);
      }
      for (String statement : statements) {
        sql.executeUpdate(statement);
      }
      for (String trigger : triggers) {
        sql.executeUpdate(trigger);
      }
      return this;
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
  }

  /** Does something to the file as it is. */
  public AuditedLedger changed(String statement) {
    try (Connection connection = connect();
        Statement sql = connection.createStatement()) {
      sql.executeUpdate(statement);
      return this;
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
  }

  /** Exchanges a piece of an entry's body, and leaves its hash. */
  public AuditedLedger exchanged(long seq, String piece, String instead) {
    if (!body(seq).contains(piece)) {
      throw new AssertionError("entry " + seq + " does not say " + piece + ": " + body(seq));
    }
    return tampered(
        "UPDATE entry SET body = replace(body, '"
            + piece
            + "', '"
            + instead
            + "') WHERE seq = "
            + seq);
  }

  /** Computes every hash anew, as somebody who knows how would. */
  public AuditedLedger rechained() {
    Map<Long, Bytes> hashes = new TreeMap<>();
    try (Connection connection = connect()) {
      Bytes hash = Chain.ORIGIN;
      try (ResultSet row =
          connection.createStatement().executeQuery("SELECT seq, body FROM entry ORDER BY seq")) {
        while (row.next()) {
          hash = Chain.link(hash, row.getLong(1), row.getString(2));
          hashes.put(row.getLong(1), hash);
        }
      }
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
    return tampered(
        hashes.entrySet().stream()
            .map(
                each ->
                    "UPDATE entry SET hash = x'"
                        + each.getValue().toHex()
                        + "' WHERE seq = "
                        + each.getKey())
            .toArray(String[]::new));
  }

  /** Every row as it is stored, in order. */
  List<StoredRow> rows() throws LedgerFault {
    List<StoredRow> rows = new ArrayList<>();
    try (LedgerFile opened = LedgerFile.open(file)) {
      opened.rows(rows::add);
    }
    return rows;
  }

  /** An entry's body. */
  public String body(long seq) {
    return text("SELECT body FROM entry WHERE seq = ?", seq);
  }

  /** An entry's hash in hexadecimal. */
  public String hash(long seq) {
    return text("SELECT lower(hex(hash)) FROM entry WHERE seq = ?", seq);
  }

  private String text(String query, long seq) {
    try (Connection connection = connect();
        PreparedStatement statement = connection.prepareStatement(query)) {
      statement.setLong(1, seq);
      try (ResultSet row = statement.executeQuery()) {
        return row.next() ? row.getString(1) : null;
      }
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
  }

  private Connection connect() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + file);
  }
}
