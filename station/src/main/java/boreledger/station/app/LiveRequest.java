package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import java.nio.file.Path;

/**
 * What to gauge from a live line.
 *
 * @param listening what to listen to
 * @param ring the ring's name; null for bores
 * @param settingTempC the setting ring's temperature in degrees Celsius; null when not taken
 * @param blockTempC the block's temperature in degrees Celsius; null when not taken
 * @param fresh open a new session even if one is unfinished
 * @param record a capture file to write what the line delivers into; null for none
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
    Path record) {
  /** A request that records nothing. */
  public LiveRequest(
      Path job,
      LiveChoice listening,
      Measure measure,
      String ring,
      Double settingTempC,
      Double blockTempC,
      Path ledger,
      boolean fresh) {
    this(job, listening, measure, ring, settingTempC, blockTempC, ledger, fresh, null);
  }

  /** A gauge on a port, which is waited for when it goes away; nothing is recorded. */
  public LiveRequest(
      Path job,
      Path gauge,
      String port,
      Measure measure,
      String ring,
      Double settingTempC,
      Double blockTempC,
      Path ledger,
      boolean fresh) {
    this(
        job,
        new LiveChoice.Gauge(gauge, port, true),
        measure,
        ring,
        settingTempC,
        blockTempC,
        ledger,
        fresh,
        null);
  }
}
