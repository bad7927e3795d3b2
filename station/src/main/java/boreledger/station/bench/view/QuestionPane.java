package boreledger.station.bench.view;

import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Command;
import boreledger.station.bench.model.Question;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Text;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Asks whether a held value is to be taken anyway. */
final class QuestionPane extends HBox {
  private final Label words = Words.label("question", Styles.QUESTION_WORDS);
  private final Label why = Words.label("question-why");

  QuestionPane(BenchModel model, KeyChoices keys) {
    getStyleClass().add(Styles.QUESTION);
    VBox text = new VBox(words, why);
    text.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(text, Priority.ALWAYS);
    Button take = answer(Command.CONFIRM, BenchText.QUESTION_TAKE, model::confirmHeld, keys);
    Button leave = answer(Command.LEAVE, BenchText.QUESTION_LEAVE, model::leaveHeld, keys);
    VBox answers = new VBox(take, leave);
    answers.getStyleClass().add(Styles.ANSWERS);
    answers.setMinWidth(Region.USE_PREF_SIZE);
    getChildren().addAll(new Sign(Sign.Kind.HELD), text, answers);
    model.shown().question().subscribe(this::show);
  }

  private static Button answer(Command command, Text words, Runnable action, KeyChoices keys) {
    Button button = new Button();
    button.setId(command.id());
    keys.key(command).subscribe(key -> button.setText(words.with(key.getName())));
    button.setMaxWidth(Double.MAX_VALUE);
    button.getStyleClass().setAll(Styles.ANSWER);
    button.setOnAction(pressed -> action.run());
    return button;
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
