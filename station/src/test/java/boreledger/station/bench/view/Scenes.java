package boreledger.station.bench.view;

import javafx.scene.Scene;

/** Lays out scenes that no window shows. */
final class Scenes {
  private Scenes() {}

  /** Applies styles and lays out until the sizes that depend on each other have settled. */
  static void layOut(Scene scene) {
    for (int pass = 0; pass < 4; pass++) {
      scene.getRoot().applyCss();
      scene.getRoot().layout();
    }
  }
}
