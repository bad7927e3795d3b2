package boreledger.station.keeping;

import boreledger.station.app.UsageProblem;
import boreledger.station.keeping.CsvRow.Standing;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Readings as CSV (RFC 4180), one line for each, session after session. */
final class CsvExport {
  private final LedgerView view;
  private final CSVPrinter printer;
  private final Progress progress;
  private final Map<String, String> gauges = new HashMap<>();
  private long readings;

  private CsvExport(LedgerView view, CSVPrinter printer, Progress progress) {
    this.view = view;
    this.printer = printer;
    this.progress = progress;
  }

  /**
   * Writes a header and every reading of the sessions that are wanted. No more than one session is
   * in memory at a time.
   *
   * @return how many readings were written
   */
  static long write(LedgerView view, Choice choice, Appendable out, Progress progress)
      throws LedgerFault, UsageProblem, IOException {
    List<Entry> openings = choice.openings(view);
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord(CsvRow.COLUMNS);
    CsvExport export = new CsvExport(view, printer, progress);
    for (Entry opening : openings) {
      export.session(opening);
    }
    printer.flush();
    return export.readings;
  }

  private void session(Entry opening) throws LedgerFault, IOException {
    List<Entry> entries = view.ofSession(opening.seq());
    Map<Long, String> hashes = new HashMap<>();
    entries.forEach(entry -> hashes.put(entry.seq(), entry.hash().toHex()));
    StoredSession session = StoredSession.of(opening, entries);
    Standings standings = new Standings(session);
    for (StoredReading stored : standings.readings()) {
      row(session, stored, standings.of(stored), hashes.get(stored.seq()));
    }
  }

  private void row(StoredSession session, StoredReading stored, Standing standing, String hash)
      throws LedgerFault, IOException {
    CsvRow row =
        new CsvRow(
            session.id(),
            session.opened(),
            stored.reading(),
            standing,
            gauge(session.opened().gauge()),
            stored.seq(),
            hash);
    printer.printRecord(row.cells());
    readings++;
    progress.passed(readings);
  }

  private String gauge(String sha256) throws LedgerFault {
    String known = gauges.get(sha256);
    if (known == null) {
      known = view.document(sha256).map(Document::name).orElse("");
      gauges.put(sha256, known);
    }
    return known;
  }
}
