package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.BlockPicture;
import boreledger.station.plan.Position;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The block from above, with what to know about the drawing under it. */
final class BlockPane extends VBox {
  private final Label note = Words.label("block-note", Styles.MUTED);

  BlockPane(ObservableValue<BlockPicture> pictures, Consumer<Position> goTo) {
    BlockDrawing drawing = new BlockDrawing(pictures, goTo);
    VBox.setVgrow(drawing, Priority.ALWAYS);
    getChildren().addAll(drawing, note);
    setMinHeight(0);
    getStyleClass().add(Styles.PICTURE);
    pictures.subscribe(this::show);
  }

  private void show(BlockPicture picture) {
    note.setText(picture.note());
    note.setVisible(!picture.note().isEmpty());
    note.setManaged(note.isVisible());
  }
}
