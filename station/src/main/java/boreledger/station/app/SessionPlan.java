package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Plan;
import boreledger.station.plan.Position;
import boreledger.station.session.StoredSession;
import java.util.List;

/** The positions of a session by the job that holds for it. */
final class SessionPlan {
  private SessionPlan() {}

  static List<Position> of(LedgerView view, StoredSession session) throws LedgerFault {
    return of(new StoredJobs(view).job(session.job(), session.opened()), session.opened());
  }

  /** The positions that a job plans for a session; none when it has no ring of the session's. */
  static List<Position> of(Job job, SessionOpened opened) {
    Ring ring = opened.ring() == null ? null : job.ring(opened.ring()).orElse(null);
    return ring == null && opened.measure() != Measure.BORE
        ? List.of()
        : Plan.of(job, opened.measure(), ring);
  }
}
