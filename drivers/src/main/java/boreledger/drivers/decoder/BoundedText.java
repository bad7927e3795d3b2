package boreledger.drivers.decoder;

/**
 * Text that may be looked at only so often, so that a pattern that tries every way to match cannot
 * hold up the station.
 */
final class BoundedText implements CharSequence {
  private static final int STEPS_PER_CHARACTER = 1_000;

  private final String text;
  private int stepsLeft;

  BoundedText(String text) {
    this.text = text;
    stepsLeft = STEPS_PER_CHARACTER * (1 + text.length());
  }

  /** The allowance is used up. */
  static final class TooManySteps extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooManySteps() {
      super("too many steps", null, false, false);
    }
  }

  @Override
  public char charAt(int index) {
    if (stepsLeft-- <= 0) {
      throw new TooManySteps();
    }
    return text.charAt(index);
  }

  @Override
  public int length() {
    return text.length();
  }

  @Override
  public CharSequence subSequence(int start, int end) {
    return text.substring(start, end);
  }

  @Override
  public String toString() {
    return text;
  }
}
