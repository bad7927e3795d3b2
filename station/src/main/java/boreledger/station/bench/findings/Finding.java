package boreledger.station.bench.findings;

import boreledger.station.job.Job;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobSessions;

/** What a job's readings mean, with the job and the sessions that it was computed from. */
public record Finding(JobSessions sessions, JobResults results) {
  /** The job as its latest session knew it. */
  public Job job() {
    return sessions.job();
  }
}
