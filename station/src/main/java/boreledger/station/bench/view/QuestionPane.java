package boreledger.station.bench.view;

import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Question;
import boreledger.station.bench.model.Text;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Asks whether a held value is to be taken anyway. */
final class QuestionPane extends VBox {
  private final Label words = Words.label("question", Styles.QUESTION_WORDS);
  private final Label why = Words.label("question-why");

  QuestionPane(BenchModel model) {
    getStyleClass().add(Styles.QUESTION);
    Button take = new Button(Text.QUESTION_TAKE.with());
    take.setId("take");
    take.setOnAction(pressed -> model.confirmHeld());
    Button leave = new Button(Text.QUESTION_LEAVE.with());
    leave.setId("leave");
    leave.setOnAction(pressed -> model.leaveHeld());
    HBox line = new HBox(new Sign(Sign.Kind.HELD), words);
    line.getStyleClass().add(Styles.SAYING_LINE);
    HBox answers = new HBox(take, leave);
    answers.getStyleClass().add(Styles.ANSWERS);
    getChildren().addAll(line, why, answers);
    model.shown().question().subscribe(this::show);
  }

  private void show(Question question) {
    setVisible(question != null);
    if (question != null) {
      words.setText(question.words());
      why.setText(question.why());
      setAccessibleText(question.words() + ". " + question.why());
    }
  }
}
