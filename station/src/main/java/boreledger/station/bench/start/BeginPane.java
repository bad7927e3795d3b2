package boreledger.station.bench.start;

import boreledger.station.bench.look.Presence;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.StartText;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The button that begins, and what stands in the way. */
final class BeginPane extends HBox {
  BeginPane(StartModel model) {
    getStyleClass().add(Styles.FOOT);
    Button begin = new Button(StartText.BEGIN.with());
    begin.setId("begin");
    begin.getStyleClass().add(Styles.MAIN_BUTTON);
    begin.setDefaultButton(true);
    begin.setOnAction(pressed -> model.begin());
    Label problem = Words.label("start-problem", Styles.PROBLEM);
    problem.textProperty().bind(model.problem());
    Label goes = Words.label("start-going", Styles.MUTED);
    goes.setText(StartText.GOES_ON.with());
    Button stop = new Button(StartText.STOP.with());
    stop.setId("stop-gauging");
    stop.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    stop.setOnAction(pressed -> model.stopGauging());
    begin.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    Presence.when(model.going().going(), stop);
    Presence.when(model.going().going(), goes);
    Presence.when(model.problem().map(words -> !words.isEmpty()), problem);
    VBox said = new VBox(problem, goes);
    said.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(said, stop, begin);
  }
}
