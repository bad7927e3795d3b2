package boreledger.station.cli;

import boreledger.station.results.AnswerJson;
import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The options that every command has, and the way its answer goes out. */
final class Answer {
  @Spec(Target.MIXEE)
  private CommandSpec command;

  @Option(names = "--json", description = "Answer with one JSON document on standard output.")
  private boolean json;

  @Option(names = "--trace", description = "Show where in the program an error arose.")
  private boolean trace;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  /** Prints an answer, in words or as JSON. */
  void print(Object document, String words) {
    PrintWriter out = command.commandLine().getOut();
    out.println(json ? AnswerJson.write(document) : words.stripTrailing());
    out.flush();
  }

  /** Tells something on the way, on standard error. */
  void tell(String line) {
    PrintWriter err = command.commandLine().getErr();
    err.println(line);
    err.flush();
  }
}
