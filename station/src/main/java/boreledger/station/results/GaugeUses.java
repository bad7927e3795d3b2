package boreledger.station.results;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.results.JobSessions.Earlier;
import boreledger.station.session.StoredSession;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the sessions that count were gauged with, and under which conditions. */
final class GaugeUses {
  private final JobSessions stored;

  GaugeUses(JobSessions stored) {
    this.stored = stored;
  }

  List<GaugeUse> list() {
    return stored.inForce().stream().map(this::use).toList();
  }

  /** One caution for each session whose block stood otherwise than when its bores were gauged. */
  List<Statement> cautions() {
    List<Statement> cautions = new ArrayList<>();
    Optional<StoredSession> bores = stored.latest(Measure.BORE, null);
    for (Earlier session : all()) {
      Conditions stood = Conditions.of(session.job().engine());
      bores
          .filter(latest -> stood.differFrom(conditions(latest)))
          .map(latest -> caution(session, stood, latest))
          .ifPresent(cautions::add);
    }
    return cautions;
  }

  private List<Earlier> all() {
    List<Earlier> all = new ArrayList<>(stored.earlier());
    for (StoredSession session : stored.sessions()) {
      all.add(new Earlier(session.id(), session.opened(), stored.jobOf(session)));
    }
    return all;
  }

  private Statement caution(Earlier session, Conditions stood, StoredSession bores) {
    return Phrase.BLOCK_STOOD_OTHERWISE.of(
        Name.of(session.id()),
        what(session.opened()),
        stood.statement().orElseThrow(),
        Name.of(bores.id()),
        conditions(bores).statement().orElseThrow());
  }

  private static Statement what(SessionOpened opened) {
    Statement measure =
        switch (opened.measure()) {
          case BORE -> Phrase.MEASURE_BORE.of();
          case GAP -> Phrase.MEASURE_GAP.of();
          case RING_DEPTH -> Phrase.MEASURE_RING_DEPTH.of();
        };
    return opened.ring() == null
        ? measure
        : Phrase.MEASURE_OF_RING.of(measure, new Name(opened.ring()));
  }

  private Conditions conditions(StoredSession session) {
    return Conditions.of(stored.jobOf(session).engine());
  }

  private GaugeUse use(StoredSession session) {
    SessionOpened opened = session.opened();
    GaugeProfile gauge = stored.gaugeOf(session);
    ZeroChecks checks = new ZeroChecks(session, stored.jobOf(session).setting());
    return new GaugeUse(
        session.id(),
        opened.measure().word(),
        opened.ring(),
        opened.wall().toString(),
        gauge.name(),
        gauge.source().sha256(),
        gauge.resolutionMm(),
        gauge.maxErrorMm(),
        conditions(session),
        session.stintAt(0).settingTempC(),
        session.stintAt(0).blockTempC(),
        checks.openingMm(),
        checks.closingMm(),
        checks.driftMm());
  }
}
