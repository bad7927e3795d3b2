package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What to gauge from a live line.
 *
 * @param listening what to listen to
 * @param ring the ring's name; null for bores
 * @param settingTempC the setting ring's temperature in degrees Celsius; null when not taken
 * @param blockTempC the block's temperature in degrees Celsius; null when not taken
 * @param fresh open a new session even if one is unfinished
 * @param record a capture file to write what the main gauge's line delivers into; null for none
 * @param also further gauges; often empty
 */
public record LiveRequest(
    Path job,
    LiveChoice listening,
    Measure measure,
    String ring,
    Double settingTempC,
    Double blockTempC,
    Path ledger,
    boolean fresh,
    Path record,
    List<Also> also) {
  /** Takes a copy of the list. */
  public LiveRequest {
    also = List.copyOf(also);
  }

  /**
   * A further gauge, whose readings go into a session of their own.
   *
   * @param ring the ring's name; null for bores
   */
  public record Also(LiveChoice.Gauge gauge, Measure measure, String ring) {}

  /** A request for one gauge that records nothing. */
  public LiveRequest(
      Path job,
      LiveChoice listening,
      Measure measure,
      String ring,
      Double settingTempC,
      Double blockTempC,
      Path ledger,
      boolean fresh) {
    this(job, listening, measure, ring, settingTempC, blockTempC, ledger, fresh, null, List.of());
  }

  /**
   * What the further gauges are to gauge.
   *
   * @throws UsageProblem if two gauges share a port, or a measure and a ring
   */
  List<LiveRequest> alsoAsked() throws UsageProblem {
    Set<String> ports = new HashSet<>();
    Set<String> sessions = new HashSet<>(Set.of(measure.word() + " " + ring));
    if (listening instanceof LiveChoice.Gauge main) {
      ports.add(main.port());
    }
    List<LiveRequest> requests = new ArrayList<>();
    for (Also each : also) {
      if (!ports.add(each.gauge().port())) {
        throw new UsageProblem("--also: two gauges cannot share the port " + each.gauge().port());
      }
      if (!sessions.add(each.measure().word() + " " + each.ring())) {
        throw new UsageProblem("--also: another gauge has the same measure and ring");
      }
      requests.add(
          new LiveRequest(
              job,
              each.gauge(),
              each.measure(),
              each.ring(),
              settingTempC,
              blockTempC,
              ledger,
              fresh));
    }
    return requests;
  }
}
