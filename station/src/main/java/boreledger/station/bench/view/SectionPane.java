package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.SectionPicture;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The cylinder from the side, with what is seen over it. */
final class SectionPane extends VBox {
  SectionPane(ObservableValue<SectionPicture> pictures) {
    Label caption = Words.label("section-caption", Styles.MUTED);
    SectionDrawing drawing = new SectionDrawing(pictures);
    VBox.setVgrow(drawing, Priority.ALWAYS);
    getChildren().addAll(caption, drawing);
    setMinHeight(0);
    getStyleClass().add(Styles.PICTURE);
    pictures.subscribe(picture -> caption.setText(picture.caption()));
  }
}
