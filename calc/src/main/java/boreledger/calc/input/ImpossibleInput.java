package boreledger.calc.input;

/**
 * A value that cannot be, such as a negative bore; the message is one line for a person and says
 * what was given, with its unit, and what would do.
 */
public final class ImpossibleInput extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * Refuses an input.
   *
   * @param message what was given, its unit and the rule it broke; not null
   */
  public ImpossibleInput(String message) {
    super(message);
  }
}
