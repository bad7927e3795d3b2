package boreledger.station.job.draft;

import boreledger.station.job.Job;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is to be said about a draft.
 *
 * @param problems by field, in the order of the file; the reader of job files stops at the first
 *     thing that it refuses, so more may come when these are mended
 * @param job what was read; null while there are problems
 */
public record Findings(Map<Place, Problem> problems, Job job) {
  /** Takes a copy of the map that keeps its order. */
  public Findings {
    problems = Collections.unmodifiableMap(new LinkedHashMap<>(problems));
  }
}
