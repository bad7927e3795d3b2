package boreledger.station.audit;

import boreledger.station.audit.Shelf.Lacking;
import boreledger.station.ledger.EntryBody.Chosen;
import boreledger.station.ledger.EntryBody.OfSession;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.rules.ReadingRules;
import boreledger.station.session.Change;
import boreledger.station.session.Version;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/** Checks sessions entry by entry: documents, places, corrections, and every reading's value. */
final class SessionsAudit {
  private final Shelf shelf;
  private final CorrectionsAudit corrections;
  private final Remarks remarks;
  private final Tally tally;
  private final RuleChanges changes;
  private final TreeSet<String> programs;
  private final Map<Long, SessionWatch> sessions = new HashMap<>();

  SessionsAudit(Shelf shelf, CorrectionsAudit corrections, Remarks remarks) {
    this(shelf, corrections, remarks, new Tally(), new RuleChanges(), new TreeSet<>());
  }

  private SessionsAudit(
      Shelf shelf,
      CorrectionsAudit corrections,
      Remarks remarks,
      Tally tally,
      RuleChanges changes,
      TreeSet<String> programs) {
    this.shelf = shelf;
    this.corrections = corrections;
    this.remarks = remarks;
    this.tally = tally;
    this.changes = changes;
    this.programs = programs;
  }

  /** One for sessions deeper inside; what is counted is counted here. */
  SessionsAudit within(Shelf other, CorrectionsAudit its, Remarks inside) {
    return new SessionsAudit(other, its, inside, tally, changes, programs);
  }

  Tally tally() {
    return tally;
  }

  /** The versions of the program that wrote. */
  List<String> programs() {
    return List.copyOf(programs);
  }

  /** What came out otherwise by the rules of now. */
  RuleChanges changes() {
    return changes;
  }

  /**
   * A session begins.
   *
   * @param wall the clock that it goes by
   */
  void opened(long seq, SessionOpened opened, WallWatch wall) throws LedgerFault {
    programs.add(opened.program());
    noTemperature(opened.settingTempC(), opened.blockTempC())
        .ifPresent(what -> remarks.finding(seq, what));
    try {
      shelf.gauge(opened);
      String jobName = shelf.job(opened.job(), opened).name();
      if (!jobName.equals(opened.jobName())) {
        remarks.finding(seq, "names the job " + opened.jobName() + ", its file " + jobName);
      }
      PlanWatch plan = new PlanWatch(shelf.plan(opened.job(), opened));
      SessionWatch session = new SessionWatch(opened, plan);
      sessions.put(seq, session);
      (session.isRecorded() ? session.wall() : wall).shows(seq, opened.wall(), remarks);
    } catch (Lacking e) {
      remarks.finding(seq, "the session cannot be followed: " + e.getMessage());
    }
  }

  /**
   * Something is said in a session.
   *
   * @param wall the clock that it goes by
   */
  void said(long seq, OfSession body, WallWatch wall) throws LedgerFault {
    SessionWatch session = sessions.get(body.session());
    if (session == null) {
      remarks.finding(seq, "belongs to session " + body.session() + ", which cannot be followed");
      if (body instanceof ReadingTaken) {
        tally.computed(false);
      }
      return;
    }
    if (body instanceof ReadingTaken reading) {
      reading(seq, reading, session);
    } else if (body instanceof SessionResumed resumed) {
      session.resumed(resumed);
      noTemperature(resumed.settingTempC(), resumed.blockTempC())
          .ifPresent(what -> remarks.finding(seq, what));
      programs.add(session.program());
    } else if (body instanceof Chosen) {
      session.plan().chosen();
    } else if (body instanceof SessionEnded && !session.plan().isDone()) {
      remarks.finding(seq, "ends session " + body.session() + " before its plan is done");
    } else {
      corrections.wrong(seq, body, session).ifPresent(what -> remarks.finding(seq, what));
    }
    boolean ownClock = session.isRecorded() && !CorrectionsAudit.isCorrection(body);
    (ownClock ? session.wall() : wall).shows(seq, body.wall(), remarks);
  }

  /** What is said of a temperature that no command takes; empty when both can be. */
  static Optional<String> noTemperature(Double settingTempC, Double blockTempC) {
    if (!Change.canBe(settingTempC)) {
      return Optional.of("says that the setting ring had " + settingTempC + " °C");
    }
    return Change.canBe(blockTempC)
        ? Optional.empty()
        : Optional.of("says that the block had " + blockTempC + " °C");
  }

  private void reading(long seq, ReadingTaken reading, SessionWatch session) throws LedgerFault {
    Long setting = session.setting();
    session.read(seq, reading.position()).ifPresent(wrong -> remarks.finding(seq, wrong));
    boolean check = reading.position() instanceof SettingCheck;
    if (!Objects.equals(reading.setting(), check ? null : setting)) {
      remarks.finding(
          seq,
          "refers to entry "
              + reading.setting()
              + " as the setting in force, where "
              + setting
              + " is");
    }
    List<String> differences;
    try {
      ReadingAgain again = new ReadingAgain(shelf.gauge(session.opened()));
      differences = again.differences(reading, ReadingRules.of(session.program()));
      changes.look(remarks.here(seq), reading, session.program(), again);
    } catch (Lacking e) {
      differences = List.of(e.getMessage());
    }
    tally.computed(differences.isEmpty());
    for (String difference : differences) {
      remarks.finding(seq, difference + by(session.program()));
    }
  }

  /** Names both versions where they are not the same: its rules may have been other ones. */
  private static String by(String program) {
    return program.equals(Version.PROGRAM)
        ? ""
        : " (taken by program " + program + ", checked by " + Version.PROGRAM + ")";
  }
}
