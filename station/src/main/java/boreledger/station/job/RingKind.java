package boreledger.station.job;

import java.util.Locale;

/** What a ring does, by which the gap rule table tells rings apart. */
public enum RingKind {
  /** The compression ring nearest the flame. */
  TOP("top"),
  /** The compression ring below it. */
  SECOND("second"),
  /** An oil control ring's rail, which is verified and never filed. */
  OIL("oil");

  private final String word;

  RingKind(String word) {
    this.word = word;
  }

  /** The word in the gap rule table. */
  public String word() {
    return word;
  }

  /**
   * The kind of a ring by its name, or by its place where the name does not tell: the first ring
   * listed is the top ring, those below it are taken as second rings.
   *
   * @param index the ring's place in the job, from 0
   */
  static RingKind of(String name, int index) {
    String words = name.toLowerCase(Locale.ROOT);
    if (words.contains(OIL.word) || words.contains("rail")) {
      return OIL;
    } else if (words.contains(TOP.word)) {
      return TOP;
    } else if (words.contains(SECOND.word)) {
      return SECOND;
    }
    return index == 0 ? TOP : SECOND;
  }
}
