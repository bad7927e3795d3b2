package boreledger.station.app;

import boreledger.station.job.DisplayUnit;
import boreledger.station.report.Paper;
import java.nio.file.Path;

/**
 * A build sheet that is asked for.
 *
 * @param jobName the job; null for the ledger's only one
 * @param out the file to write
 * @param replace whether a file that is there already may be replaced
 * @param unit the unit of lengths; null for the job's own
 * @param by who makes the sheet; null when not said
 */
public record ReportRequest(
    Path ledger,
    String jobName,
    Path out,
    boolean replace,
    Paper paper,
    DisplayUnit unit,
    String by) {}
