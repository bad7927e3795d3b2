package boreledger.drivers.keyboard;

/**
 * Characters of a number that were handed on as typed and had no Enter yet. They may be the
 * beginning of a value that was held up on its way: what follows them soon is no value of its own.
 */
final class LoosePieces {
  private static final double LONGEST_PAUSE_S = 1;
  private static final int MOST_CHARACTERS = 64;

  private final StringBuilder text = new StringBuilder();
  private double lastS = Double.NEGATIVE_INFINITY;
  private int longestRun;

  /** Takes a run that was handed on, whose last character came at a time. */
  void add(String run, double beganS, double endedS) {
    if (!isFollowedAt(beganS)) {
      clear();
    }
    boolean ofANumber = run.chars().anyMatch(LoosePieces::isOfANumber);
    if (!ofANumber && text.isEmpty()) {
      return;
    }
    text.append(run);
    text.delete(0, Math.max(0, text.length() - MOST_CHARACTERS));
    longestRun = Math.max(longestRun, run.length());
    if (ofANumber) {
      lastS = endedS;
    }
  }

  /** Whether what begins at a time may belong to them. */
  boolean isFollowedAt(double tS) {
    return !text.isEmpty() && tS - lastS <= LONGEST_PAUSE_S;
  }

  /** The longest run that came at a gauge's speed, in characters. */
  int longestRun() {
    return longestRun;
  }

  String text() {
    return text.toString();
  }

  /** What follows begins anew: an Enter came. */
  void clear() {
    text.setLength(0);
    longestRun = 0;
    lastS = Double.NEGATIVE_INFINITY;
  }

  private static boolean isOfANumber(int character) {
    return Character.isDigit(character) || "+-.,".indexOf(character) >= 0;
  }
}
