package boreledger.station.bench.view;

import javafx.scene.layout.Region;

/** A small drawn sign, so that no state is told by colour alone. Its shape stands in the style. */
final class Sign extends Region {
  /** The signs. */
  enum Kind {
    NONE("sign-none"),
    TAKEN("sign-taken"),
    REFUSED("sign-refused"),
    HELD("sign-held"),
    CAUTION("sign-caution"),
    WAITING("sign-waiting"),
    RECEIVING("sign-receiving"),
    QUIET("sign-quiet"),
    ENDED("sign-ended"),
    OPEN("sign-open"),
    NOW("sign-now"),
    PROGRAM("sign-program");

    private final String style;

    Kind(String style) {
      this.style = style;
    }

    String style() {
      return style;
    }
  }

  Sign(Kind kind) {
    show(kind);
  }

  void show(Kind kind) {
    getStyleClass().setAll("sign", kind.style());
  }
}
