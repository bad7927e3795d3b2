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

  /** The job and the gauge profile, as far as the ledger does not hold their content yet. */
  static List<EntryBody> notYetIn(Ledger ledger, SessionStart start) throws LedgerFault {
    JobSource job = start.job().source();
    ProfileSource gauge = start.gauge().source();
    List<EntryBody> missing = new ArrayList<>();
    try (LedgerView view = ledger.view()) {
      for (Document document :
          List.of(
              new Document("job", job.fileName(), job.sha256(), job.text()),
              new Document("gauge", gauge.fileName(), gauge.sha256(), gauge.text()))) {
        if (view.document(document.sha256()).isEmpty()) {
          missing.add(document);
        }
      }
    }
    return missing;
  }
}
