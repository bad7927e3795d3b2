package boreledger.station.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The bench window. */
@Command(name = "bench", description = "Opens the bench window.")
final class BenchCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @Override
  public Integer call() {
    return ExitStatus.BAD_INPUT;
  }
}
