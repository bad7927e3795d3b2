package boreledger.station.bench.view;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.LineHealth;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** How the line is, at the foot. */
final class LinePane extends HBox {
  // A longer name of a line wraps.
  private static final int LONGEST_SOURCE = 40;

  private final Sign sign = new Sign(Sign.Kind.NONE);
  private final Label source = Words.label("line-source", Styles.LINE_SOURCE);
  private final Label words = Words.label("line-words");
  private final Label refused = Words.label("line-refused", Styles.LINE_REFUSED);

  LinePane(ObservableValue<LineHealth> line) {
    getStyleClass().add(Styles.LINE);
    words.setMinWidth(Region.USE_PREF_SIZE);
    // What is left of the width is for the reasons, which wrap.
    refused.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(refused, Priority.ALWAYS);
    getChildren().addAll(sign, source, words, refused);
    line.subscribe(this::show);
  }

  private void show(LineHealth health) {
    sign.show(
        switch (health.state()) {
          case NONE -> Sign.Kind.NONE;
          case WAITING -> Sign.Kind.WAITING;
          case RECEIVING -> Sign.Kind.RECEIVING;
          case QUIET -> Sign.Kind.QUIET;
          case GONE -> Sign.Kind.CAUTION;
          case ENDED -> Sign.Kind.ENDED;
          case BROKE -> Sign.Kind.REFUSED;
        });
    source.setText(health.source());
    source.setMinWidth(health.source().length() > LONGEST_SOURCE ? 0 : Region.USE_PREF_SIZE);
    source.setManaged(!health.source().isEmpty());
    words.setText(health.words());
    refused.setText(health.refused());
  }
}
