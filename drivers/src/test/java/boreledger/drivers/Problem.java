package boreledger.drivers;

import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.drivers.file.FileProblem;
import org.junit.jupiter.api.function.Executable;

/** The whole message of a file problem. */
public final class Problem {
  private Problem() {}

  /** Runs what must be refused and gives the refusal's message. */
  public static String of(Executable refused) {
    return assertThrows(FileProblem.class, refused).getMessage();
  }
}
