package boreledger.station.gauging;

import boreledger.drivers.decoder.Sample;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import boreledger.station.session.SessionStart;
import java.util.List;

/** What a gauging run tells whoever watches it, in order. */
public sealed interface GaugingEvent {
  /**
   * A session was opened or resumed; the line is up.
   *
   * @param session the number of the entry that opened it
   * @param resumed whether it goes on where an earlier sitting stopped
   * @param lineNotes things worth telling about the line, such as no modem lines; often empty
   */
  record Began(
      SessionStart start, long session, boolean resumed, List<String> lineNotes, Progress progress)
      implements GaugingEvent {
    /** Takes a copy of the list. */
    public Began {
      lineNotes = List.copyOf(lineNotes);
    }
  }

  /** The gauge shows this now. When samples come faster than they are watched, some are skipped. */
  record Live(Sample sample) implements GaugingEvent {}

  /** Something became a reading, or did not; the ledger has it already. */
  record Said(Outcome outcome, Progress progress) implements GaugingEvent {}

  /**
   * Something about the line that a person should know: a unit that changed, or bytes that nothing
   * can be made of.
   *
   * @param what one line
   */
  record Noticed(String what) implements GaugingEvent {}

  /**
   * The line went away; it is waited for, and the ledger says so. It may be said again with more to
   * tell.
   *
   * @param why one line that says which line, and what to do
   */
  record LineGone(String why, Progress progress) implements GaugingEvent {}

  /**
   * The line that had gone is there again; the ledger says so.
   *
   * @param how one line that says where it was found
   */
  record LineBack(String how, Progress progress) implements GaugingEvent {}

  /**
   * The same of a further gauge of the run, which has a session of its own.
   *
   * @param gauge its name, such as {@code ring-depth top}
   */
  record Beside(String gauge, GaugingEvent event) implements GaugingEvent {}

  /** The run is over; no event follows. */
  record Over(Ending ending, Progress progress) implements GaugingEvent {}

  /**
   * How far the plan is.
   *
   * @param next the position to gauge now; null when the plan is done
   * @param done how many positions have their reading
   * @param planned how many positions there are
   */
  record Progress(Position next, int done, int planned) {}
}
