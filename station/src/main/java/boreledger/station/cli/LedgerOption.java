package boreledger.station.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that names a ledger which must be there. */
final class LedgerOption {
  @Option(names = "--ledger", required = true, paramLabel = "FILE", description = "The ledger.")
  private Path ledger;

  Path path() {
    return ledger;
  }
}
