package boreledger.station.cli;

import boreledger.station.session.Version;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;

/** The program's command line. */
@Command(
    name = "boreledger",
    synopsisSubcommandLabel = "COMMAND",
    versionProvider = Boreledger.ProgramVersion.class,
    description = "From gauge to bore taper and ring gap, with a ledger nobody can quietly alter.",
    footer = {
      "",
      "Example: boreledger demo",
      "",
      "Exit status: 0 done; 1 done, and something asks for attention; 2 bad input or usage;",
      "3 a gauge or line failed; 4 the ledger is missing or could not be read or written."
    },
    subcommands = {
      DemoCommand.class,
      BenchCommand.class,
      PortsCommand.class,
      CaptureCommand.class,
      ReplayCommand.class,
      ResultsCommand.class,
      ReportCommand.class,
      AuditCommand.class,
      SealCommand.class,
      TakeBackCommand.class,
      FiledCommand.class,
      CorrectCommand.class,
      ExportCommand.class,
      ImportCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      CompareCommand.class,
      FigureCommand.class,
      GaugeCommand.class,
      HelpCommand.class
    })
public final class Boreledger implements Runnable {
  private static final int HELP_COLUMNS = 100;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version.")
  private boolean version;

  private final Interruption interruption;

  private Boreledger(Interruption interruption) {
    this.interruption = interruption;
  }

  /** What an interrupt of the program leads to. */
  Interruption interruption() {
    return interruption;
  }

  /**
   * Runs one command.
   *
   * @return the exit status
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    return run(args, out, err, new Interruption());
  }

  static int run(String[] args, PrintWriter out, PrintWriter err, Interruption interruption) {
    Complaints complaints = new Complaints();
    return new CommandLine(new Boreledger(interruption))
        .setOut(out)
        .setErr(err)
        .setCaseInsensitiveEnumValuesAllowed(true)
        // A path may begin with an at sign; examples must not be broken in the middle of a word.
        .setExpandAtFiles(false)
        .setUsageHelpWidth(HELP_COLUMNS)
        .setExecutionStrategy(Boreledger::execute)
        .setParameterExceptionHandler(complaints)
        .setExecutionExceptionHandler(complaints)
        .execute(args);
  }

  /** Lets an error of the machine, such as a missing library, be told like any other slip. */
  private static int execute(ParseResult parsed) {
    try {
      return new RunLast().execute(parsed);
    } catch (Error e) {
      List<CommandLine> commands = parsed.asCommandLineList();
      CommandLine last = commands.get(commands.size() - 1);
      throw new ExecutionException(last, e.toString(), new IllegalStateException(e));
    }
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "which command?");
  }

  /** Tells the version that the program was built as. */
  static final class ProgramVersion implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"boreledger " + Version.PROGRAM};
    }
  }
}
