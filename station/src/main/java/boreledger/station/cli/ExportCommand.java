package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.keeping.Choice;
import boreledger.station.keeping.Export;
import boreledger.station.keeping.Export.Exported;
import boreledger.station.keeping.Export.Format;
import boreledger.station.ledger.LedgerFault;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Readings as CSV, or the whole ledger as JSON. */
@Command(
    name = "export",
    description = "Hands out the readings as CSV, or the whole ledger with its chain as JSON.",
    footer = {
      "",
      "CSV is RFC 4180 in UTF-8, one reading to a line, taken-back ones too. A text that a",
      "spreadsheet could take for a formula has an apostrophe before it; numbers never have.",
      "Passes with the file are no readings and have no line there: see results --json.",
      "JSON holds every entry exactly as it is stored: see import.",
      "Example: boreledger export --ledger bench.db --out bench.csv --job \"Pumphouse three\""
    })
final class ExportCommand implements Callable<Integer> {
  private static final String STANDARD_OUTPUT = "-";
  private static final int CHUNK = 1 << 16;

  @ParentCommand private Boreledger program;
  @Spec private CommandSpec spec;
  @Mixin private Answer answer;

  @Option(names = "--ledger", required = true, paramLabel = "FILE", description = "The ledger.")
  private Path ledger;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The new file; - for standard output, where nothing else goes then.")
  private String out;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "csv",
      description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} otherwise.")
  private Format format;

  @Option(names = "--job", paramLabel = "NAME", description = "Only this job's readings.")
  private String job;

  @Option(names = "--session", paramLabel = "N", description = "Only this session's readings.")
  private Long session;

  @Option(names = "--replace", description = "Overwrite the file if it is there.")
  private boolean replace;

  @Override
  public Integer call() throws LedgerFault, UsageProblem, FileProblem {
    if (format == Format.JSON && (job != null || session != null)) {
      throw new UsageProblem("--job and --session go with csv: a chain is exported whole");
    }
    Export export = new Export(ledger, format, new Choice(job, session));
    LongWork work =
        new LongWork(answer, format == Format.CSV ? "readings written" : "entries written");
    program.interruption().stopBy(work::stop);
    if (out.equals(STANDARD_OUTPUT)) {
      toStandardOutput(export, work);
    } else {
      Exported exported = export.into(Path.of(out), replace, work);
      answer.print(exported, exported.words());
    }
    return ExitStatus.DONE;
  }

  private void toStandardOutput(Export export, LongWork work)
      throws LedgerFault, UsageProblem, FileProblem {
    try {
      Writer writer = new BufferedWriter(new StandardOutput(spec.commandLine().getOut()), CHUNK);
      Exported exported = export.to(writer, work);
      writer.flush();
      answer.tell(exported.words());
    } catch (IOException e) {
      throw FileProblem.of("standard output", e.getMessage(), e);
    }
  }
}
