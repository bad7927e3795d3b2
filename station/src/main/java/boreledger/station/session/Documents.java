package boreledger.station.session;

import boreledger.drivers.profile.ProfileSource;
import boreledger.station.job.JobSource;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import java.util.ArrayList;
import java.util.List;

/** The files that a session's readings depend on, as ledger entries. */
final class Documents {
  private Documents() {}

  /** The job, the gauge profile and the tables. */
  static List<Document> of(SessionStart start) {
    JobSource job = start.job().source();
    ProfileSource gauge = start.gauge().source();
    List<Document> documents = new ArrayList<>();
    documents.add(new Document("job", job.fileName(), job.sha256(), job.text()));
    documents.add(new Document("gauge", gauge.fileName(), gauge.sha256(), gauge.text()));
    documents.addAll(tables(start));
    return documents;
  }

  /** The tables that computations fall back on. */
  static List<Document> tables(SessionStart start) {
    return start.tables().files().stream()
        .map(file -> new Document("table", file.name(), file.sha256(), file.text()))
        .toList();
  }

  /** Those documents whose content the ledger does not hold yet. */
  static List<EntryBody> notYetIn(Ledger ledger, SessionStart start) throws LedgerFault {
    List<EntryBody> missing = new ArrayList<>();
    try (LedgerView view = ledger.view()) {
      for (Document document : of(start)) {
        if (view.document(document.sha256()).isEmpty()) {
          missing.add(document);
        }
      }
    }
    return missing;
  }
}
