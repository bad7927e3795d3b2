package boreledger.station.results;

import boreledger.drivers.capture.Measure;
import boreledger.station.job.Job;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.results.SessionComparison.Change;
import boreledger.station.results.SessionComparison.Side;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Holds two sessions against each other. */
public final class Comparing {
  private final One before;
  private final One after;

  /** The two cannot be compared; the message says why in one line. */
  public static final class NotComparable extends Exception {
    private static final long serialVersionUID = 1L;

    NotComparable(String message) {
      super(message);
    }
  }

  /** One session with what it depends on. */
  record One(JobSessions stored, StoredSession session) {
    Job job() {
      return stored.jobOf(session);
    }

    Conditions conditions() {
      return Conditions.of(job().engine());
    }

    Side side() {
      return new Side(
          session.id(),
          session.opened().jobName(),
          session.opened().wall().toString(),
          conditions());
    }

    Set<Position> places() {
      Set<Position> places = new LinkedHashSet<>();
      session.inForce().stream()
          .map(StoredReading::position)
          .filter(position -> !(position instanceof SettingCheck))
          .forEach(places::add);
      return places;
    }
  }

  private Comparing(One before, One after) {
    this.before = before;
    this.after = after;
  }

  /**
   * Compares two sessions, each the only one among its job's.
   *
   * @throws NotComparable if they did not measure the same thing
   */
  public static SessionComparison of(JobSessions before, JobSessions after) throws NotComparable {
    return new Comparing(
            new One(before, before.sessions().get(0)), new One(after, after.sessions().get(0)))
        .compare();
  }

  private SessionComparison compare() throws NotComparable {
    Measure measure = before.session().opened().measure();
    String ring = before.session().opened().ring();
    if (measure != after.session().opened().measure()
        || !Objects.equals(ring, after.session().opened().ring())) {
      throw new NotComparable(
          "session "
              + before.session().id()
              + " measured "
              + what(before)
              + ", session "
              + after.session().id()
              + " measured "
              + what(after)
              + "; name two of the same");
    }
    return new SessionComparison(
        before.side(),
        after.side(),
        measure.word(),
        ring,
        changes(measure),
        missing(before, after),
        missing(after, before),
        cautions());
  }

  private List<Change> changes(Measure measure) throws NotComparable {
    return switch (measure) {
      case BORE -> BoreChanges.of(before, after);
      case GAP -> GapChanges.of(before, after);
      case RING_DEPTH ->
          throw new NotComparable("ring depths are not compared; bores and gaps are");
    };
  }

  private static List<String> missing(One from, One in) {
    Set<Position> places = from.places();
    places.removeAll(in.places());
    return places.stream().map(Position::words).toList();
  }

  private List<Statement> cautions() {
    List<Statement> cautions = new ArrayList<>();
    if (before.conditions().differFrom(after.conditions())) {
      cautions.add(
          Phrase.COMPARED_OTHERWISE.of(
              before.conditions().statement().orElseThrow(),
              after.conditions().statement().orElseThrow()));
    }
    if (!before.session().opened().jobName().equals(after.session().opened().jobName())) {
      cautions.add(Phrase.COMPARED_OTHER_NAMES.of());
    }
    if (after.session().opened().wall().isBefore(before.session().opened().wall())) {
      cautions.add(Phrase.COMPARED_TURNED_ROUND.of());
    }
    if (before.session().stintAt(0).blockTempC() == null
        || after.session().stintAt(0).blockTempC() == null) {
      cautions.add(Phrase.COMPARED_WITHOUT_TEMPERATURE.of());
    }
    return cautions;
  }

  private static String what(One one) {
    String ring = one.session().opened().ring();
    return one.session().opened().measure().word() + (ring == null ? "" : " (" + ring + ")");
  }
}
