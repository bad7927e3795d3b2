package boreledger.station.audit;

import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.Stints;
import boreledger.station.session.StoredSession.Amendment;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What an audit remembers of a session from entry to entry. */
final class SessionWatch {
  private final SessionOpened opened;
  private final PlanWatch plan;
  private final WallWatch wall = WallWatch.ofRecording();
  private final TreeSet<Long> settings = new TreeSet<>();
  private final Map<Long, Position> moved = new HashMap<>();
  private final Map<Long, Position> takenBack = new HashMap<>();
  private final Set<Long> filed = new HashSet<>();
  private final Stints stints;
  private String job;
  private String program;

  SessionWatch(SessionOpened opened, PlanWatch plan) {
    this.opened = opened;
    this.plan = plan;
    this.program = opened.program();
    this.job = opened.job();
    this.stints = new Stints(opened);
  }

  SessionOpened opened() {
    return opened;
  }

  /** The content hash of the job that holds now. */
  String job() {
    return job;
  }

  PlanWatch plan() {
    return plan;
  }

  /** The clock that the session's own entries go by. */
  WallWatch wall() {
    return wall;
  }

  /** Whether the bytes came from a capture file, whose clock is not this machine's. */
  boolean isRecorded() {
    return opened.line() != null && opened.line().startsWith("capture file ");
  }

  /** The version of the program that wrote what comes now. */
  String program() {
    return program;
  }

  void resumed(SessionResumed resumed) {
    program = resumed.program() == null ? program : resumed.program();
    stints.from(resumed.tS(), resumed.settingTempC(), resumed.blockTempC());
    plan.resumed();
  }

  /** What the session was opened with was other. */
  Amendment amend(long seq, Amended amended) {
    Amendment amendment = new Amendment(seq, amended, stints.at(amended.tS()), job);
    stints.from(amended.tS(), amended.settingTempC(), amended.blockTempC());
    job = amended.job() == null ? job : amended.job();
    return amendment;
  }

  /** Where a reading stands by now. */
  Position place(long seq, Position read) {
    return moved.getOrDefault(seq, read);
  }

  /** The setting ring reading in force; null where there is none. */
  Long setting() {
    return settings.isEmpty() ? null : settings.last();
  }

  /** What is wrong with the place of a reading; empty when nothing is. */
  Optional<String> read(long seq, Position position) {
    if (position instanceof SettingCheck) {
      settings.add(seq);
    }
    return plan.read(position);
  }

  /** What is wrong with taking a reading back; empty when nothing is. */
  Optional<String> takeBack(long seq, Position read) {
    if (takenBack.containsKey(seq)) {
      return Optional.of("takes entry " + seq + " back, which does not stand any more");
    }
    Position position = place(seq, read);
    takenBack.put(seq, position);
    settings.remove(seq);
    plan.takenBack(position);
    return Optional.empty();
  }

  /** What is wrong with restoring a reading; empty when nothing is. */
  Optional<String> restore(long seq) {
    Position position = takenBack.remove(seq);
    if (position == null) {
      return Optional.of("restores entry " + seq + ", which was not taken back");
    }
    if (position instanceof SettingCheck) {
      settings.add(seq);
    }
    plan.stands(position);
    return Optional.empty();
  }

  /** What is wrong with moving a reading; empty when nothing is. */
  Optional<String> move(long seq, Position read, Position to) {
    if (takenBack.containsKey(seq)) {
      return Optional.of("moves entry " + seq + ", which was taken back");
    }
    if (read instanceof SettingCheck || to instanceof SettingCheck || !plan.stands(to)) {
      return Optional.of("moves entry " + seq + " to no place of the session's plan");
    }
    plan.takenBack(place(seq, read));
    moved.put(seq, to);
    return Optional.empty();
  }

  /** A pass with the file was noted. */
  void filed(long seq) {
    filed.add(seq);
  }

  /** What is wrong with withdrawing a pass with the file; empty when nothing is. */
  Optional<String> withdraw(long seq) {
    return filed.remove(seq)
        ? Optional.empty()
        : Optional.of("withdraws entry " + seq + ", no pass of its session that counts");
  }
}
