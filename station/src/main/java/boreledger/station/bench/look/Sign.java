package boreledger.station.bench.look;

import javafx.scene.layout.Region;

/** A small drawn sign, so that no state is told by colour alone. Its shape stands in the style. */
public final class Sign extends Region {
  /** The signs. */
  public enum Kind {
    /** Nothing, but its room. */
    NONE("sign-none"),
    /** Taken, kept, done. */
    TAKEN("sign-taken"),
    /** Taken, and given back. */
    TAKEN_BACK("sign-taken-back"),
    /** Refused, beyond, broken. */
    REFUSED("sign-refused"),
    /** Waits for an answer. */
    HELD("sign-held"),
    /** Look at this. */
    CAUTION("sign-caution"),
    /** Nothing came yet. */
    WAITING("sign-waiting"),
    /** Comes in. */
    RECEIVING("sign-receiving"),
    /** Came, and is silent now. */
    QUIET("sign-quiet"),
    /** Over. */
    ENDED("sign-ended"),
    /** Still to come. */
    OPEN("sign-open"),
    /** Here. */
    NOW("sign-now"),
    /** The program's own. */
    PROGRAM("sign-program");

    private final String style;

    Kind(String style) {
      this.style = style;
    }

    /** Its style class. */
    public String style() {
      return style;
    }
  }

  /** A sign. */
  public Sign(Kind kind) {
    show(kind);
  }

  /** Shows another one. */
  public void show(Kind kind) {
    getStyleClass().setAll("sign", kind.style());
  }
}
