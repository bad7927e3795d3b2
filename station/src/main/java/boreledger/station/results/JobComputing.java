package boreledger.station.results;

import boreledger.calc.bore.Diameter;
import boreledger.calc.ring.GapReading;
import boreledger.drivers.capture.Measure;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.JobResults.KindChoice;
import boreledger.station.results.JobResults.TableUsed;
import boreledger.station.session.StoredSession;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Computes what a job's readings mean. */
public final class JobComputing {
  private final JobSessions stored;
  private final Optional<BoreSession> bores;
  private final Map<String, GapSession> gaps = new LinkedHashMap<>();
  private final Targets targets;

  private JobComputing(JobSessions stored) {
    this.stored = stored;
    this.targets = new Targets(stored.job(), stored.tables().gapRules());
    this.bores =
        stored
            .latest(Measure.BORE, null)
            .flatMap(
                session ->
                    BoreSession.of(
                        stored.job().plan(),
                        stored.jobOf(session),
                        session,
                        stored.gaugeOf(session)));
    for (Ring ring : stored.job().rings()) {
      stored
          .latest(Measure.GAP, ring.name())
          .map(session -> new GapSession(ring, session, stored.gaugeOf(session)))
          .ifPresent(session -> gaps.put(ring.name(), session));
    }
  }

  /** The results of a job's sessions. */
  public static JobResults of(JobSessions stored) {
    return new JobComputing(stored).results();
  }

  private JobResults results() {
    Job job = stored.job();
    List<CylinderBore> all =
        IntStream.rangeClosed(1, job.engine().cylinders()).mapToObj(this::bore).toList();
    List<CylinderResults> cylinders = all.stream().map(this::cylinder).toList();
    int refused = stored.inForce().stream().mapToInt(session -> session.refused().size()).sum();
    boolean attention =
        refused > 0
            || bores.map(BoreSession::drifted).orElse(false)
            || cylinders.stream().anyMatch(CylinderResults::needsAttention);
    return new JobResults(
        job.name(),
        stored.ledgerHead(),
        job.displayUnit().symbol(),
        cylinders,
        Advising.of(job, all),
        choices(all),
        new GaugeUses(stored).list(),
        stored.tables().files().stream()
            .map(file -> new TableUsed(file.name(), file.sha256()))
            .toList(),
        refused,
        attention,
        cautions());
  }

  private List<KindChoice> choices(List<CylinderBore> all) {
    List<KindChoice> choices = new ArrayList<>();
    for (Ring ring : stored.job().rings()) {
      List<CylinderRing> cylinders = all.stream().map(bore -> ring(bore, ring)).toList();
      RingChoosing.of(ring, cylinders)
          .ifPresent(choice -> choices.add(new KindChoice(ring.name(), choice)));
    }
    return choices;
  }

  private CylinderBore bore(int cylinder) {
    List<Diameter> diameters = bores.map(each -> each.diameters(cylinder)).orElse(List.of());
    return new CylinderBore(stored.job(), cylinder, diameters);
  }

  private CylinderResults cylinder(CylinderBore bore) {
    return new CylinderResults(
        bore.cylinder(),
        bore.results(),
        stored.job().rings().stream().map(ring -> ring(bore, ring).results()).toList());
  }

  private CylinderRing ring(CylinderBore bore, Ring ring) {
    Job job = stored.job();
    List<GapReading> read =
        Optional.ofNullable(gaps.get(ring.name()))
            .map(session -> session.gaps(bore.cylinder()))
            .orElse(List.of());
    RingGapping gapping =
        new RingGapping(
            ring,
            targets.of(ring),
            Heat.of(job.running(), stored.tables().temperatures()),
            targets.boosted(),
            BoreSession.thermal(job.uncertainty()));
    return new CylinderRing(
        job,
        bore.cylinder(),
        ring,
        bore.wholeSections(),
        read,
        stored
            .latest(Measure.RING_DEPTH, ring.name())
            .map(session -> new RingTilts(job, ring, session)),
        new FiledPasses(stored).of(bore.cylinder(), ring),
        gapping);
  }

  private List<Statement> cautions() {
    List<Statement> cautions = new ArrayList<>();
    bores.ifPresent(session -> cautions.addAll(session.cautions()));
    cautions.addAll(new GaugeUses(stored).cautions());
    gaps.values().forEach(session -> cautions.addAll(session.cautions()));
    for (StoredSession session : stored.inForce()) {
      cautions.addAll(ReadingCautions.of(session));
    }
    return cautions;
  }
}
