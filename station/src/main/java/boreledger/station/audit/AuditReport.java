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
 * @param corrected readings that were moved and sessions that were amended; the first thousand
 * @param otherwiseNow figures that rules changed since, as they were and as they would be; the
 *     first thousand
 * @param otherwiseNowInAll how many such figures there are
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
    List<CorrectedEntry> corrected,
    List<ThenAndNow> otherwiseNow,
    long otherwiseNowInAll,
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
    corrected = List.copyOf(corrected);
    otherwiseNow = List.copyOf(otherwiseNow);
    programs = List.copyOf(programs);
  }

  /** The same without findings and notices, for whoever shows them apart. */
  public AuditReport withoutRemarks() {
    return new AuditReport(
        entries,
        intact,
        List.of(),
        0,
        List.of(),
        0,
        recomputed,
        differing,
        resultsOf,
        head,
        seals,
        takenBack,
        corrected,
        otherwiseNow,
        otherwiseNowInAll,
        programs,
        program,
        seconds);
  }
}
