package boreledger.station.keeping;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.BenchFolder;
import boreledger.station.app.EntryWriter;
import boreledger.station.app.FilingBook;
import boreledger.station.app.PassNote;
import boreledger.station.app.Replay;
import boreledger.station.app.StoredJobs;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position.Bore;
import boreledger.station.results.AnswerJson;
import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

/** Ledgers in a folder, gauged by replays or filled by hand. */
record Shop(Path folder) {
  static final Choice ALL = new Choice(null, null);
  static final Clock NOON = Clock.fixed(Instant.parse("2032-01-01T12:00:00Z"), ZoneOffset.UTC);

  Path file(String name) {
    return folder.resolve(name);
  }

  /** Gauges the small engine's bores and gaps into a ledger, made when it is not there. */
  Path gauged(String name, SmallJob job) throws Exception {
    return gauged(name, job, BenchFolder.BORES);
  }

  /** The same with other bores. */
  Path gauged(String name, SmallJob job, List<String> bores) throws Exception {
    BenchFolder bench = new BenchFolder(folder.resolve("files"));
    List<Path> captures = List.of(bench.bores(bores), bench.gaps(BenchFolder.GAPS));
    Replay.prepare(bench.job(job), captures, null).into(file(name), event -> {});
    return file(name);
  }

  /** A ledger in which nothing stands but its beginning. */
  Path fresh(String name) throws Exception {
    Ledger.openOrCreate(file(name)).close();
    return file(name);
  }

  /** Adds entries. */
  void append(String name, List<EntryBody> bodies) throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file(name))) {
      ledger.append(bodies);
    }
  }

  /** Notes a pass with the file; answers its entry. */
  long filed(String name, String beforeMm, String afterMm) throws Exception {
    PassNote note =
        new PassNote(
            null, 1, "top", 5, new BigDecimal(beforeMm), new BigDecimal(afterMm), "A. Turner");
    return filing(name).note(note).entry();
  }

  /** Withdraws a pass with the file. */
  void withdrawn(String name, long entry) throws Exception {
    filing(name).withdraw(entry, "a slip", "A. Turner");
  }

  private FilingBook filing(String name) {
    return new FilingBook(file(name), EntryWriter.BY_ITSELF, NOON);
  }

  /** A JSON export of a ledger. */
  Path exported(String name) throws Exception {
    Path out = file(name + "." + Files.list(folder).count() + ".json");
    new Export(file(name), Export.Format.JSON, ALL).into(out, false, Progress.UNWATCHED);
    return out;
  }

  /** A CSV export of a ledger. */
  String csv(String name) throws Exception {
    return csv(name, ALL);
  }

  /** A CSV export of some sessions. */
  String csv(String name, Choice choice) throws Exception {
    StringWriter out = new StringWriter();
    new Export(file(name), Export.Format.CSV, choice).to(out, Progress.UNWATCHED);
    return out.toString();
  }

  /** Brings an export into a ledger. */
  Import.Report imported(String name, Path export) throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(file(name))) {
      return new Import(export, "A. Turner", NOON).into(ledger, Progress.UNWATCHED);
    }
  }

  /**
   * A job's results as JSON, without the head and the session numbers that are the ledger's own.
   */
  JsonNode results(String name, String job) throws Exception {
    try (LedgerView view = LedgerView.open(file(name))) {
      ObjectNode results =
          (ObjectNode)
              new ObjectMapper().readTree(AnswerJson.write(new StoredJobs(view).results(job)));
      results.remove("ledger_head");
      results.path("gauges").forEach(use -> ((ObjectNode) use).remove("session"));
      return results;
    }
  }

  /** A session with one reading, the texts and numbers of which are given. */
  static List<EntryBody> oneReading(long firstSeq, String jobName, double valueMm, String caution) {
    Instant wall = Instant.parse("2031-05-06T08:00:00Z");
    return List.of(
        new Document("gauge", "=gauge", "ab", "text"),
        new SessionOpened(
            jobName, "00", "ab", List.of(), Measure.BORE, null, wall, 20.0, 20.0, "x", "1"),
        new ReadingTaken(
            firstSeq + 1,
            new Bore(2, 12.5, "thrust"),
            1.5,
            wall.plusMillis(1500),
            valueMm,
            null,
            "press",
            null,
            List.of(new KeptSample(1.5, "2d312e300d0a", valueMm)),
            List.of(caution)));
  }
}
