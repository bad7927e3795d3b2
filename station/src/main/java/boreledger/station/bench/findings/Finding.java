package boreledger.station.bench.findings;

import boreledger.station.job.Job;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobSessions;
import boreledger.station.results.WhatIf;

/**
 * What a job's readings mean, with the job and the sessions that it was computed from.
 *
 * @param results under what is supposed
 * @param asItIs with nothing supposed beyond what the job says
 */
public record Finding(JobSessions sessions, JobResults results, JobResults asItIs) {
  static Finding of(JobSessions sessions, WhatIf supposed) {
    JobResults asItIs = WhatIf.AS_IT_IS.of(sessions);
    boolean nothing = supposed.equals(WhatIf.AS_IT_IS);
    return new Finding(sessions, nothing ? asItIs : supposed.of(sessions), asItIs);
  }

  /** The job as its latest session knew it. */
  public Job job() {
    return sessions.job();
  }
}
