package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Place;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The next position in words. */
final class PlacePane extends VBox {
  private final Label label = Words.label("place-label", Styles.MUTED);
  private final Label title = Words.label("place-title", Styles.PLACE_TITLE);
  private final Label detail = Words.label("place-detail", Styles.PLACE_DETAIL);
  private final Label hint = Words.label("hint", Styles.HINT);

  PlacePane(ObservableValue<Place> place) {
    getChildren().addAll(label, title, detail, hint);
    place.subscribe(this::show);
  }

  private void show(Place place) {
    label.setText(place.label());
    title.setText(place.title());
    detail.setText(place.detail());
    hint.setText(place.hint());
    setAccessibleText(place.title() + ", " + place.detail());
  }
}
