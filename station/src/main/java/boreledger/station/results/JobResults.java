package boreledger.station.results;

import boreledger.station.wording.Statement;
import java.util.List;

/**
 * What a job's readings mean. In JSON every component goes by its name in snake case; what cannot
 * be known yet is null.
 *
 * @param ledgerHead the head of the ledger it was computed from, in hexadecimal
 * @param displayUnit the unit in which the job wants lengths shown, {@code mm} or {@code in}
 * @param advice hone or oversize; null until every cylinder was read
 * @param ringChoices which gauged ring suits which bore, for each kind with two or more gauged
 * @param gauges what the sessions that count were gauged with
 * @param tables the tables that were in force
 * @param refused how many samples of the sessions became no reading
 * @param attention whether anything asks a person to look: a limit not surely kept, a refused
 *     sample, a gap that does not agree with its bore, a ring that filing cannot make good, a zero
 *     that drifted too far
 * @param cautions what a person should mind about the job as a whole
 */
public record JobResults(
    String job,
    String ledgerHead,
    String displayUnit,
    List<CylinderResults> cylinders,
    AdviceResult advice,
    List<KindChoice> ringChoices,
    List<GaugeUse> gauges,
    List<TableUsed> tables,
    int refused,
    boolean attention,
    List<Statement> cautions) {
  /** Takes copies of the lists. */
  public JobResults {
    cylinders = List.copyOf(cylinders);
    ringChoices = List.copyOf(ringChoices);
    gauges = List.copyOf(gauges);
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
  }

  /** Which ring of a kind suits which bore. */
  public record KindChoice(String ring, RingChoice choice) {}

  /**
   * A table that computations fell back on.
   *
   * @param file its file's name
   * @param sha256 its content hash
   */
  public record TableUsed(String file, String sha256) {}

  /** One cylinder. */
  public record CylinderResults(int cylinder, BoreResults bore, List<RingResults> rings) {
    /** Takes a copy of the list. */
    public CylinderResults {
      rings = List.copyOf(rings);
    }

    boolean needsAttention() {
      return rings.stream().anyMatch(RingResults::attention)
          || bore.checks().stream().anyMatch(CheckResult::needsAttention);
    }
  }
}
