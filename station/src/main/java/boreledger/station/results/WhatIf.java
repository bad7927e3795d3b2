package boreledger.station.results;

import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.job.Running;

/**
 * The same readings under another use of the engine or other running temperatures, to see what
 * would change. Nothing of it is kept.
 *
 * @param use a use of the gap rule table; null for what the job says of each ring
 * @param running other running temperatures and margin; null for the job's
 */
public record WhatIf(String use, Running running) {
  /** Nothing else than what the job says. */
  public static final WhatIf AS_IT_IS = new WhatIf(null, null);

  /** What the readings would mean. */
  public JobResults of(JobSessions sessions) {
    return JobComputing.of(
        new JobSessions(
            job(sessions.job()),
            sessions.tables(),
            sessions.sessions(),
            sessions.earlier(),
            sessions.gauges(),
            sessions.jobs(),
            sessions.ledgerHead()));
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
        running == null ? job.running() : running,
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
