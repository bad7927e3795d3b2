package boreledger.station.report;

import boreledger.station.job.Job;
import boreledger.station.results.JobResults;
import boreledger.station.table.Tables;
import boreledger.station.wording.LengthFormat;
import java.time.Instant;

/**
 * Everything that a sheet says.
 *
 * @param job the job that the results are of
 * @param tables the tables that were in force
 * @param by who makes the sheet; null when not said
 * @param made when it is made
 * @param program the program's version
 * @param seal the ledger's seal in words; null when it has none
 */
public record SheetFacts(
    JobResults results,
    Job job,
    Tables tables,
    LengthFormat lengths,
    Paper paper,
    String by,
    Instant made,
    String program,
    String seal) {}
