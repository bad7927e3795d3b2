package boreledger.station.cli;

import boreledger.calc.input.ImpossibleInput;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.station.app.UsageProblem;
import boreledger.station.keeping.Stopped;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.seal.KeyProblem;
import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The one place where an error becomes one line on standard error and an exit status. */
final class Complaints implements IParameterExceptionHandler, IExecutionExceptionHandler {
  @Override
  public int handleParseException(ParameterException problem, String[] args) {
    CommandLine command = problem.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    complain(command, problem.getMessage() + "; see " + name + " --help");
    return ExitStatus.BAD_INPUT;
  }

  @Override
  public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) {
    if (parsed.originalArgs().contains("--trace")) {
      problem.printStackTrace(command.getErr());
    }
    int status = status(problem);
    if (status == ExitStatus.PROGRAM_FAILED) {
      complain(command, "a fault of the program itself: " + problem + "; --trace shows where");
    } else {
      complain(command, problem.getMessage());
    }
    return status;
  }

  private static int status(Exception problem) {
    if (problem instanceof LineFault) {
      return ExitStatus.LINE_FAILED;
    } else if (problem instanceof LedgerFault) {
      return ExitStatus.LEDGER_FAILED;
    } else if (problem instanceof FileProblem
        || problem instanceof UsageProblem
        || problem instanceof KeyProblem
        || problem instanceof ImpossibleInput) {
      return ExitStatus.BAD_INPUT;
    } else if (problem instanceof Stopped) {
      return ExitStatus.ATTENTION;
    }
    return ExitStatus.PROGRAM_FAILED;
  }

  private static void complain(CommandLine command, String message) {
    command.getErr().println(String.join(" ", Arrays.asList(message.strip().split("\\R\\s*"))));
    command.getErr().flush();
  }
}
