package boreledger.drivers.file;

/**
 * Something is wrong in a file that a person wrote. The message is one line beginning {@code
 * file:line:column: } or {@code file:line: } and says what was found and what was expected.
 */
public final class FileProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private FileProblem(String message, Throwable cause) {
    super(message, cause);
  }

  /** A problem at a line and column, both counted from 1. */
  public static FileProblem at(String file, int line, int column, String what) {
    return new FileProblem(file + ":" + line + ":" + column + ": " + what, null);
  }

  /** A problem with a whole line, counted from 1. */
  public static FileProblem at(String file, int line, String what) {
    return new FileProblem(file + ":" + line + ": " + what, null);
  }

  /** A problem with the file as a whole, such as that it is not there. */
  public static FileProblem of(String file, String what, Throwable cause) {
    return new FileProblem(file + ": " + what, cause);
  }
}
