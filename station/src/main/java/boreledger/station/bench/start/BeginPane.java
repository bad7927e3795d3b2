package boreledger.station.bench.start;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The button that begins, and what stands in the way. */
final class BeginPane extends HBox {
  BeginPane(StartModel model) {
    getStyleClass().add(Styles.FOOT);
    Button begin = new Button(Text.START_BEGIN.with());
    begin.setId("begin");
    begin.getStyleClass().add(Styles.MAIN_BUTTON);
    begin.setDefaultButton(true);
    begin.setOnAction(pressed -> model.begin());
    Label problem = Words.label("start-problem", Styles.PROBLEM);
    problem.textProperty().bind(model.problem());
    problem.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(problem, Priority.ALWAYS);
    getChildren().addAll(problem, begin);
  }
}
