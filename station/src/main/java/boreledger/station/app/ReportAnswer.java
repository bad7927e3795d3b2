package boreledger.station.app;

/**
 * A build sheet that was written. In JSON every component goes by its name in snake case.
 *
 * @param file the file
 * @param unit {@code mm} or {@code in}
 * @param paper {@code a4} or {@code letter}
 * @param cautions how many cautions arose from the job's readings
 * @param attention whether the results ask a person to look
 */
public record ReportAnswer(
    String file,
    int pages,
    String job,
    String ledgerHead,
    String unit,
    String paper,
    int cautions,
    boolean attention) {}
