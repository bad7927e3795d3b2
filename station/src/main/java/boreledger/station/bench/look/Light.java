package boreledger.station.bench.look;

/** The colours that a shop's light wants. */
public enum Light {
  /** Light on dark, for a dim shop. */
  DARK(""),
  /** Dark on light, for a bright one. */
  BRIGHT(Styles.BRIGHT),
  /** Black on white and nothing between, for the sun. */
  SUN(Styles.SUN);

  private final String style;

  Light(String style) {
    this.style = style;
  }

  /** The style class of the window's root; empty for the dark one. */
  public String style() {
    return style;
  }

  /** The one that follows when a person asks for another. */
  public Light next() {
    return values()[(ordinal() + 1) % values().length];
  }
}
