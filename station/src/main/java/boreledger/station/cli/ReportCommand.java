package boreledger.station.cli;

import boreledger.station.app.ReportAnswer;
import boreledger.station.app.ReportFile;
import boreledger.station.app.ReportRequest;
import boreledger.station.app.UsageProblem;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.report.Paper;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The build sheet of a job. */
@Command(
    name = "report",
    description = "Writes a job's build sheet: its bores, gaps, gauges and cautions as a PDF file.",
    footer = {
      "",
      "Example: boreledger report --ledger bench.db --out sheet.pdf --by \"A. Turner\""
    })
final class ReportCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--ledger",
      required = true,
      paramLabel = "FILE",
      description = "The ledger to read.")
  private Path ledger;

  @Option(
      names = "--job",
      paramLabel = "NAME",
      description = "The job's name, when the ledger has several.")
  private String job;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The PDF file to write.")
  private Path out;

  @Option(names = "--replace", description = "Write over the file if it is there already.")
  private boolean replace;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      defaultValue = "a4",
      description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} otherwise.")
  private Paper paper;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "${COMPLETION-CANDIDATES}; the job's own unit otherwise.")
  private DisplayUnit unit;

  @Option(names = "--by", paramLabel = "NAME", description = "Who makes the sheet.")
  private String by;

  @Override
  public Integer call() throws LedgerFault, UsageProblem {
    ReportRequest request = new ReportRequest(ledger, job, out, replace, paper, unit, by);
    ReportAnswer report = ReportFile.write(request, Clock.systemUTC());
    answer.print(report, words(report));
    return ExitStatus.attentionIf(report.attention());
  }

  private static String words(ReportAnswer report) {
    return String.format(
        Locale.ROOT,
        "%s: build sheet of %s, %d pages, %d cautions%s",
        report.file(),
        report.job(),
        report.pages(),
        report.cautions(),
        report.attention() ? "; something asks for attention, see the sheet" : "");
  }
}
