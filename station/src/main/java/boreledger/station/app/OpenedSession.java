package boreledger.station.app;

import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.StoredSession;

/**
 * A session with what it was gauged with.
 *
 * @param session as the ledger tells it, what was amended in force
 * @param gauge what a person calls the gauge
 * @param gaugeFile its profile's file
 */
public record OpenedSession(StoredSession session, String gauge, String gaugeFile) {
  static OpenedSession of(LedgerView view, long id) throws LedgerFault, UsageProblem {
    StoredSession session =
        StoredSession.some(view, each -> each == id).stream()
            .findFirst()
            .orElseThrow(() -> new UsageProblem("entry " + id + " is no session"));
    String sha256 = session.opened().gauge();
    return new OpenedSession(
        session,
        LedgerBook.gaugeName(view, sha256),
        view.document(sha256).map(Document::name).orElse(""));
  }
}
