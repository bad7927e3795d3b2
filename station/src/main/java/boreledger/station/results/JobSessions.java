package boreledger.station.results;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.job.Job;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.session.FiledPass;
import boreledger.station.session.StoredSession;
import boreledger.station.table.Tables;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What results are computed from.
 *
 * @param job the job as it was said last: by the latest session, or by an amendment after it
 * @param tables the tables that were in force then
 * @param sessions its sessions as far as they count, oldest first
 * @param earlier its sessions that do not count any more, oldest first
 * @param gauges the gauge profiles of the sessions that count, by content hash
 * @param jobs the jobs of the sessions that count as they were opened or last amended, by the
 *     sessions' numbers
 * @param filed the passes with the file that count, whichever session they were noted in
 * @param ledgerHead the ledger's head, in hexadecimal
 */
public record JobSessions(
    Job job,
    Tables tables,
    List<StoredSession> sessions,
    List<Earlier> earlier,
    Map<String, GaugeProfile> gauges,
    Map<Long, Job> jobs,
    List<FiledPass> filed,
    String ledgerHead) {
  /** Takes copies of the collections. */
  public JobSessions {
    sessions = List.copyOf(sessions);
    earlier = List.copyOf(earlier);
    gauges = Map.copyOf(gauges);
    jobs = Map.copyOf(jobs);
    filed = List.copyOf(filed);
  }

  /**
   * A session of which a later one took the place; its readings are not read.
   *
   * @param id the number of the entry that opened it
   * @param job the job as it was opened or last amended
   */
  public record Earlier(long id, SessionOpened opened, Job job) {}

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

  /** The job that holds for a session. */
  Job jobOf(StoredSession session) {
    return jobs.get(session.id());
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
