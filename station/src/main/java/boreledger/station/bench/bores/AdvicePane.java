package boreledger.station.bench.bores;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.WindowText;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What to do with the engine, in one sentence. */
final class AdvicePane extends VBox {
  AdvicePane(ObservableValue<BoresPage> page) {
    Label title = Words.label("bores-advice", Styles.ROOM_TITLE);
    getChildren().add(title);
    page.subscribe(now -> title.setText(now == null ? WindowText.ROOM_BORES.with() : now.advice()));
  }
}
