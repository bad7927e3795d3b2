package boreledger.station.results;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.job.Job;
import boreledger.station.session.StoredSession;
import boreledger.station.table.Tables;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What results are computed from.
 *
 * @param job the job as its latest session knew it
 * @param tables the tables that were in force then
 * @param sessions its sessions, oldest first
 * @param gauges the gauge profiles of these sessions by content hash
 * @param jobs the jobs as the sessions were opened with them, by content hash
 * @param ledgerHead the ledger's head, in hexadecimal
 */
public record JobSessions(
    Job job,
    Tables tables,
    List<StoredSession> sessions,
    Map<String, GaugeProfile> gauges,
    Map<String, Job> jobs,
    String ledgerHead) {
  /** Takes copies of the collections. */
  public JobSessions {
    sessions = List.copyOf(sessions);
    gauges = Map.copyOf(gauges);
    jobs = Map.copyOf(jobs);
  }

  /**
   * The session whose readings count for a measure: the latest one. Readings of an earlier one are
   * not mixed in, since the engine may have been worked on in between.
   *
   * @param ring the ring's name; null for bores
   */
  Optional<StoredSession> latest(Measure measure, String ring) {
    return sessions.stream()
        .filter(session -> session.opened().measure() == measure)
        .filter(session -> Objects.equals(session.opened().ring(), ring))
        .reduce((earlier, later) -> later);
  }

  /** The job as a session was opened with it. */
  Job jobOf(StoredSession session) {
    return jobs.get(session.opened().job());
  }

  /** The sessions whose readings count: the latest of each measure and ring. */
  List<StoredSession> inForce() {
    return sessions.stream()
        .filter(
            session ->
                latest(session.opened().measure(), session.opened().ring())
                    .equals(Optional.of(session)))
        .toList();
  }

  /** The gauge profile that a session used. */
  GaugeProfile gaugeOf(StoredSession session) {
    return gauges.get(session.opened().gauge());
  }
}
