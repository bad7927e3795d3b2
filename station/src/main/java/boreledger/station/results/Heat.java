package boreledger.station.results;

import boreledger.calc.ring.RunningTemperatures;
import boreledger.station.job.Running;
import boreledger.station.table.UsualTemperatures;

/**
 * Temperatures of the running engine, the job's as far as it gives them.
 *
 * @param origin where they come from
 * @param marginMm the gap wanted to be left when running, in millimetres
 */
record Heat(RunningTemperatures running, String origin, double marginMm) {
  static Heat of(Running job, UsualTemperatures usual) {
    boolean whole =
        job.ringTempC() != null && job.wallTopTempC() != null && job.wallBottomTempC() != null;
    RunningTemperatures running =
        new RunningTemperatures(
            or(job.ringTempC(), usual.ringTempC()),
            or(job.wallTopTempC(), usual.wallTopTempC()),
            or(job.wallBottomTempC(), usual.wallBottomTempC()));
    return new Heat(running, whole ? "the job" : usual.origin(), or(job.hotMarginMm(), 0));
  }

  private static double or(Double given, double usual) {
    return given == null ? usual : given;
  }
}
