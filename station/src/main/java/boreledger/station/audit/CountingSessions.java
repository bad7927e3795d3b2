package boreledger.station.audit;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The sessions that count, by their jobs' names: the latest of each measure and ring. */
final class CountingSessions {
  private CountingSessions() {}

  /** Those of a ledger, imported ones at their place among its own. */
  static Map<String, List<Long>> of(LedgerView view) throws LedgerFault {
    Map<String, Map<String, Long>> latestByJob = new TreeMap<>();
    for (Entry opening : view.sessions()) {
      SessionOpened opened = (SessionOpened) opening.body();
      latestByJob
          .computeIfAbsent(opened.jobName(), job -> new TreeMap<>())
          .put(opened.measure() + " " + opened.ring(), opening.seq());
    }
    Map<String, List<Long>> counting = new TreeMap<>();
    latestByJob.forEach((job, latest) -> counting.put(job, List.copyOf(latest.values())));
    return counting;
  }
}
