package boreledger.station.results;

import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.job.Running;
import boreledger.station.table.Tables;

/**
 * The same readings under another use of the engine or other running temperatures, to see what
 * would change. Nothing of it is kept.
 *
 * @param use a use of the gap rule table; null for what the job says of each ring
 * @param running other running temperatures
 */
public record WhatIf(String use, RunningSupposed running) {
  /** Nothing else than what the job says. */
  public static final WhatIf AS_IT_IS = new WhatIf(null, RunningSupposed.NOTHING);

  /** What the readings would mean. */
  public JobResults of(JobSessions sessions) {
    return JobComputing.of(
        new JobSessions(
            job(sessions.job()),
            tables(sessions),
            sessions.sessions(),
            sessions.earlier(),
            sessions.gauges(),
            sessions.jobs(),
            sessions.filed(),
            sessions.ledgerHead()));
  }

  /** What is supposed stands where otherwise what is usual does, so that it is told as supposed. */
  private Tables tables(JobSessions sessions) {
    Tables own = sessions.tables();
    if (running.equals(RunningSupposed.NOTHING)) {
      return own;
    }
    return new Tables(
        own.materials(),
        own.gapRules(),
        running.over(sessions.job().running(), own.temperatures()),
        own.files());
  }

  private Running running(Running job) {
    return running.equals(RunningSupposed.NOTHING)
        ? job
        : new Running(null, null, null, job.hotMarginMm());
  }

  private Job job(Job job) {
    return new Job(
        job.source(),
        job.name(),
        job.displayUnit(),
        job.engine(),
        job.limits(),
        job.plan(),
        job.setting(),
        job.rings().stream().map(this::ring).toList(),
        running(job.running()),
        job.pistons(),
        job.ringMarks(),
        job.uncertainty());
  }

  private Ring ring(Ring ring) {
    if (use == null) {
      return ring;
    }
    return new Ring(
        ring.name(),
        ring.kind(),
        ring.material(),
        ring.travelTopMm(),
        ring.travelBottomMm(),
        ring.gapMinMm(),
        ring.gapMaxMm(),
        use,
        null,
        ring.depthsMm(),
        ring.radialWallMm());
  }
}
