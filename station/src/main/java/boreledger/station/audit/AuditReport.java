package boreledger.station.audit;

import java.util.List;

/**
 * What an audit found. In JSON every component goes by its name in snake case.
 *
 * @param entries how many entries there are
 * @param intact whether there is no finding
 * @param findings what an untouched ledger never has; the first thousand
 * @param findingsInAll how many findings there are
 * @param notices what is worth knowing and can be in an honest ledger; the first thousand
 * @param noticesInAll how many notices there are
 * @param recomputed how many readings were computed again from their raw bytes
 * @param differing how many of them came out otherwise
 * @param resultsOf the jobs whose results were computed again
 * @param head the last entry's hash, in hexadecimal
 * @param seals the seals in the ledger and those that were given
 * @param takenBack readings that do not count, with the reason; the first thousand
 * @param programs the versions of the program that wrote
 * @param program the version that checked
 * @param seconds how long it took
 */
public record AuditReport(
    long entries,
    boolean intact,
    List<Remark> findings,
    long findingsInAll,
    List<Remark> notices,
    long noticesInAll,
    long recomputed,
    long differing,
    List<String> resultsOf,
    String head,
    List<SealSeen> seals,
    List<StruckReading> takenBack,
    List<String> programs,
    String program,
    double seconds) {
  /** Takes copies of the lists. */
  public AuditReport {
    findings = List.copyOf(findings);
    notices = List.copyOf(notices);
    resultsOf = List.copyOf(resultsOf);
    seals = List.copyOf(seals);
    takenBack = List.copyOf(takenBack);
    programs = List.copyOf(programs);
  }
}
