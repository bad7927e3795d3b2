package boreledger.station.results;

import java.util.List;

/**
 * What a job's readings mean. In JSON every component goes by its name in snake case; what cannot
 * be known yet is null.
 *
 * @param ledgerHead the head of the ledger it was computed from, in hexadecimal
 * @param refused how many samples of the sessions became no reading
 * @param attention whether anything asks a person to look: a limit not surely kept, a refused
 *     sample, a gap that does not agree with its bore, a zero that drifted too far
 * @param cautions plain sentences that belong to the job as a whole
 */
public record JobResults(
    String job,
    String ledgerHead,
    List<CylinderResults> cylinders,
    int refused,
    boolean attention,
    List<String> cautions) {
  /** Takes copies of the lists. */
  public JobResults {
    cylinders = List.copyOf(cylinders);
    cautions = List.copyOf(cautions);
  }

  /** One cylinder. */
  public record CylinderResults(
      int cylinder, BoreResults bore, List<RingResults> rings, List<String> cautions) {
    /** Takes copies of the lists. */
    public CylinderResults {
      rings = List.copyOf(rings);
      cautions = List.copyOf(cautions);
    }

    boolean needsAttention() {
      return !cautions.isEmpty() || bore.checks().stream().anyMatch(CheckResult::needsAttention);
    }
  }
}
