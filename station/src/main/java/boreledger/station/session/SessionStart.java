package boreledger.station.session;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.table.Tables;

/**
 * What a session is opened with.
 *
 * @param tables the tables that computations fall back on
 * @param ring the ring to gauge; null for bores
 * @param settingTempC the setting ring's temperature in degrees Celsius; null when not known
 * @param blockTempC the block's temperature in degrees Celsius; null when not known
 * @param line where the bytes come from, in words
 */
public record SessionStart(
    Job job,
    Tables tables,
    GaugeProfile gauge,
    Measure measure,
    Ring ring,
    Double settingTempC,
    Double blockTempC,
    String line) {
  /** The values that a reading of this session can have. */
  public Plausible plausible() {
    return switch (measure) {
      case BORE -> Plausible.bores(job, gauge.reads());
      case GAP -> Plausible.gaps();
      case RING_DEPTH -> Plausible.ringDepths(job);
    };
  }
}
