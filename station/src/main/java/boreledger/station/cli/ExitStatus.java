package boreledger.station.cli;

/** What the program's exit status means. */
final class ExitStatus {
  /** Done. */
  static final int DONE = 0;

  /** Done, and something asks for attention: a limit not kept, a refused sample, a finding. */
  static final int ATTENTION = 1;

  /** Bad input or usage. */
  static final int BAD_INPUT = 2;

  /** A gauge or a line failed. */
  static final int LINE_FAILED = 3;

  /** The ledger is missing or could not be read or written. */
  static final int LEDGER_FAILED = 4;

  /** A fault of the program itself. */
  static final int PROGRAM_FAILED = 70;

  private ExitStatus() {}

  static int attentionIf(boolean needed) {
    return needed ? ATTENTION : DONE;
  }
}
