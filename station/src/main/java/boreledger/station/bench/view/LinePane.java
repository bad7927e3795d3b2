package boreledger.station.bench.view;

import boreledger.station.bench.model.LineHealth;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** How the line is, at the foot. */
final class LinePane extends HBox {
  private final Sign sign = new Sign(Sign.Kind.NONE);
  private final Label source = Words.label("line-source", Styles.LINE_SOURCE);
  private final Label words = Words.label("line-words");
  private final Label refused = Words.label("line-refused", Styles.MUTED);

  LinePane(ObservableValue<LineHealth> line) {
    getStyleClass().add(Styles.LINE);
    words.setMinWidth(Region.USE_PREF_SIZE);
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    getChildren().addAll(sign, source, words, between, refused);
    line.subscribe(this::show);
  }

  private void show(LineHealth health) {
    sign.show(
        switch (health.state()) {
          case NONE -> Sign.Kind.NONE;
          case WAITING -> Sign.Kind.WAITING;
          case RECEIVING -> Sign.Kind.RECEIVING;
          case QUIET -> Sign.Kind.QUIET;
          case ENDED -> Sign.Kind.ENDED;
          case BROKE -> Sign.Kind.REFUSED;
        });
    source.setText(health.source());
    source.setManaged(!health.source().isEmpty());
    words.setText(health.words());
    refused.setText(health.refused());
  }
}
