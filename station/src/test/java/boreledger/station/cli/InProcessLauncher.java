package boreledger.station.cli;

import boreledger.station.blackbox.Launcher;
import boreledger.station.blackbox.Outcome;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** Runs commands in this JVM, for tests that run hundreds of them. */
public final class InProcessLauncher implements Launcher {
  @Override
  public Outcome run(List<String> args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit =
        Boreledger.run(
            args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
    return new Outcome(args, exit, out.toString(), err.toString());
  }
}
