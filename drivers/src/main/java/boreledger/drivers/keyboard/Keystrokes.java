package boreledger.drivers.keyboard;

/** What characters turned out to be. */
public sealed interface Keystrokes {
  /** The characters, in the order they came. */
  String text();

  /**
   * A gauge typed a whole value.
   *
   * @param text without the character that ended it
   * @param tS when its last character came, in seconds on the clock of the characters
   */
  record Value(String text, double tS) implements Keystrokes {}

  /**
   * The end of a value whose beginning was taken for a person's: no value, and nobody's text.
   *
   * @param text what is known of only now, with the character that ended it if that came
   * @param whole beginning and end as they came, without the character that ended it
   */
  record Pieces(String text, String whole) implements Keystrokes {}

  /** Somebody typed this, and it is for whatever they typed it into. */
  record Typed(String text) implements Keystrokes {}
}
