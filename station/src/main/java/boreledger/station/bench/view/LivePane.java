package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.LiveValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What the gauge shows now. */
final class LivePane extends VBox {
  private final Label caption = Words.label("live-caption", Styles.MUTED);
  private final Digits digits = new Digits();
  private final Label size = Words.label("live-size", Styles.LIVE_SIZE);

  LivePane(ObservableValue<LiveValue> live) {
    setId("live");
    getStyleClass().add(Styles.LIVE);
    VBox.setVgrow(digits, Priority.ALWAYS);
    getChildren().addAll(caption, digits, size);
    live.subscribe(this::show);
  }

  private void show(LiveValue value) {
    caption.setText(value.caption());
    digits.show(value);
    size.setText(value.size());
    size.setVisible(!value.size().isEmpty());
    size.setManaged(size.isVisible());
    getStyleClass().remove(Styles.STALE);
    if (!value.live()) {
      getStyleClass().add(Styles.STALE);
    }
    setAccessibleText(value.caption() + ": " + value.words());
  }
}
