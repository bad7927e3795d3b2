package boreledger.drivers.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells what a gauge types from what a person types, by speed and ending.
 *
 * <p>A value is a run of characters of which each comes at most {@value #LONGEST_GAP_S} s after the
 * one before, that ends with Enter or Tab, has {@value #FEWEST_CHARACTERS} characters or more
 * before that, a digit among them, and is not one character over and over, which a held key gives
 * as fast. Everything else was typed by a person and is handed on unchanged and in order, {@value
 * #LONGEST_GAP_S} s late at most.
 *
 * <p>A value may be held up on its way, so that its beginning is handed on as typed. What then ends
 * with Enter within a second is never a value, which would be a wrong one: beginning and end are
 * {@link Keystrokes.Pieces}. A person who types the first characters of a number slowly, and then
 * lets a gauge send within a second, has to press again. Pieces of which none has {@value
 * #FEWEST_CHARACTERS} characters look like a person's, and are handed on.
 *
 * <p>The limits are common practice, no source: a keyboard reports every 8 to 16 ms, so that a
 * gauge types a character in 8 to 32 ms; fast typists need about 100 ms, and now and then half of
 * that for two or three characters, but not for a number with its Enter.
 *
 * <p>A foot switch that sends one key cannot be told from a person: give its key to a command.
 */
public final class TypingSpeed {
  /** The longest time between two characters of a gauge, in seconds. */
  public static final double LONGEST_GAP_S = 0.05;

  private static final int FEWEST_CHARACTERS = 3;

  private final StringBuilder held = new StringBuilder();
  private final LoosePieces loose = new LoosePieces();
  private double beganS;
  private double lastS = Double.NEGATIVE_INFINITY;

  /** Nothing was typed yet. */
  public TypingSpeed() {}

  /**
   * Takes a character.
   *
   * @param tS when it came, in seconds on any clock that never runs back
   * @return what is known now, in order; often nothing yet
   */
  public List<Keystrokes> take(char character, double tS) {
    List<Keystrokes> known = new ArrayList<>();
    pause(tS).ifPresent(known::add);
    if (held.isEmpty()) {
      beganS = tS;
    }
    held.append(character);
    lastS = tS;
    if (isEnding(character)) {
      known.add(ended(tS));
      held.setLength(0);
      loose.clear();
    }
    return known;
  }

  /**
   * Says that time has passed: what is held back for longer than a gauge would pause was a
   * person's. Wants to be called some {@value #LONGEST_GAP_S} s after each character.
   */
  public Optional<Keystrokes> pause(double tS) {
    if (held.isEmpty() || tS - lastS <= LONGEST_GAP_S) {
      return Optional.empty();
    }
    Keystrokes typed = new Keystrokes.Typed(held.toString());
    loose.add(held.toString(), beganS, lastS);
    held.setLength(0);
    return Optional.of(typed);
  }

  private Keystrokes ended(double tS) {
    String text = held.substring(0, held.length() - 1);
    boolean follows = loose.isFollowedAt(beganS);
    String whole = follows ? loose.text() + text : text;
    int longestRun = follows ? Math.max(loose.longestRun(), text.length()) : text.length();
    if (longestRun < FEWEST_CHARACTERS || !couldBeAValue(whole)) {
      return new Keystrokes.Typed(held.toString());
    }
    return follows ? new Keystrokes.Pieces(held.toString(), whole) : new Keystrokes.Value(text, tS);
  }

  private static boolean couldBeAValue(String text) {
    return text.chars().anyMatch(Character::isDigit) && text.chars().distinct().count() > 1;
  }

  private static boolean isEnding(char character) {
    return character == '\n' || character == '\r' || character == '\t';
  }
}
