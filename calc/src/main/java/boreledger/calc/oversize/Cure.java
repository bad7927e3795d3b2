package boreledger.calc.oversize;

/** What makes a worn engine good again. */
public enum Cure {
  /** Every cylinder can be honed and keep its size. */
  HONE("hone"),
  /** All cylinders go to the same oversize. */
  OVERSIZE("oversize"),
  /** No listed oversize cleans every cylinder: sleeve, or another block. */
  SLEEVE_OR_BLOCK("sleeve-or-block");

  private final String word;

  Cure(String word) {
    this.word = word;
  }

  /** The word in answers. */
  public String word() {
    return word;
  }
}
