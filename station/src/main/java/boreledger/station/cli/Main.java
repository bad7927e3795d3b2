package boreledger.station.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * Where the program starts. It is no JavaFX application, so that no toolkit wakes for a command.
 */
public final class Main {
  private Main() {}

  /** Runs one command and ends with its exit status. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    Interruption interruption = Interruption.ofThisProgram();
    int status = Boreledger.run(args, out, err, interruption);
    interruption.endedWith(status);
    System.exit(status);
  }
}
