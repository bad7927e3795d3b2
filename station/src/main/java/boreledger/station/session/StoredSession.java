package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A session as the ledger tells it.
 *
 * @param id the number of the entry that opened it
 * @param readings in the order they were taken
 * @param ended whether its plan was done
 * @param lastTS the session clock at its last entry, in seconds
 */
public record StoredSession(
    long id,
    SessionOpened opened,
    List<StoredReading> readings,
    List<SampleRefused> refused,
    boolean ended,
    double lastTS) {
  /** Takes copies of the lists. */
  public StoredSession {
    readings = List.copyOf(readings);
    refused = List.copyOf(refused);
  }

  /**
   * A reading with the number of its entry.
   *
   * @param seq the entry's number
   */
  public record StoredReading(long seq, ReadingTaken reading) {
    /** Where it was taken. */
    public Position position() {
      return reading.position();
    }
  }

  /** Every session in a ledger, oldest first. */
  public static List<StoredSession> all(LedgerView view) throws LedgerFault {
    List<StoredSession> sessions = new ArrayList<>();
    for (Entry opening : view.sessions()) {
      sessions.add(of(opening, view.ofSession(opening.seq())));
    }
    return List.copyOf(sessions);
  }

  /** The reading in force at a position: the last one taken there. */
  public Optional<StoredReading> at(Position position) {
    return readings.stream()
        .filter(stored -> stored.position().equals(position))
        .reduce((earlier, later) -> later);
  }

  private static StoredSession of(Entry opening, List<Entry> entries) {
    List<StoredReading> readings = new ArrayList<>();
    List<SampleRefused> refused = new ArrayList<>();
    boolean ended = false;
    double lastTS = 0;
    for (Entry entry : entries) {
      EntryBody body = entry.body();
      if (body instanceof ReadingTaken reading) {
        readings.add(new StoredReading(entry.seq(), reading));
      } else if (body instanceof SampleRefused sample) {
        refused.add(sample);
      } else if (body instanceof SessionEnded) {
        ended = true;
      }
      lastTS = Math.max(lastTS, tS(body));
    }
    return new StoredSession(
        opening.seq(), (SessionOpened) opening.body(), readings, refused, ended, lastTS);
  }

  private static double tS(EntryBody body) {
    if (body instanceof ReadingTaken reading) {
      return reading.tS();
    } else if (body instanceof SampleRefused sample) {
      return sample.tS();
    } else if (body instanceof SessionResumed resumed) {
      return resumed.tS();
    } else if (body instanceof LineBroke fault) {
      return fault.tS();
    } else if (body instanceof SessionEnded ended) {
      return ended.tS();
    }
    return 0;
  }
}
