package boreledger.station.results;

import boreledger.calc.bore.Diameter;
import boreledger.calc.ring.GapReading;
import boreledger.drivers.capture.Measure;
import boreledger.station.job.Ring;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.session.StoredSession;
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

  private JobComputing(JobSessions stored) {
    this.stored = stored;
    this.bores =
        stored
            .latest(Measure.BORE, null)
            .flatMap(session -> BoreSession.of(stored.job(), session, stored.gaugeOf(session)));
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
    List<CylinderResults> cylinders =
        IntStream.rangeClosed(1, stored.job().engine().cylinders())
            .mapToObj(this::cylinder)
            .toList();
    int refused = stored.sessions().stream().mapToInt(session -> session.refused().size()).sum();
    boolean attention =
        refused > 0
            || bores.map(BoreSession::drifted).orElse(false)
            || cylinders.stream().anyMatch(CylinderResults::needsAttention);
    return new JobResults(
        stored.job().name(), stored.ledgerHead(), cylinders, refused, attention, cautions());
  }

  private CylinderResults cylinder(int cylinder) {
    List<Diameter> diameters = bores.map(each -> each.diameters(cylinder)).orElse(List.of());
    CylinderBore bore = new CylinderBore(stored.job(), diameters);
    List<CylinderRing> rings =
        stored.job().rings().stream().map(ring -> ring(cylinder, bore, ring)).toList();
    return new CylinderResults(
        cylinder,
        bore.results(),
        rings.stream().map(CylinderRing::results).toList(),
        rings.stream().flatMap(ring -> ring.cautions().stream()).toList());
  }

  private CylinderRing ring(int cylinder, CylinderBore bore, Ring ring) {
    List<GapReading> read =
        Optional.ofNullable(gaps.get(ring.name()))
            .map(session -> session.gaps(cylinder))
            .orElse(List.of());
    return new CylinderRing(stored.job(), ring, bore.wholeSections(), read);
  }

  private List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    bores.ifPresent(session -> cautions.addAll(session.cautions()));
    gaps.values().forEach(session -> cautions.addAll(session.cautions()));
    for (StoredSession session : stored.sessions()) {
      session
          .readings()
          .forEach(
              reading ->
                  reading
                      .reading()
                      .cautions()
                      .forEach(
                          caution ->
                              cautions.add(reading.position().words() + ": " + caution + ".")));
    }
    return cautions;
  }
}
