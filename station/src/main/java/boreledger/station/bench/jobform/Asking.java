package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Asks before something is lost. The focus goes to the answer that changes nothing. */
final class Asking extends HBox {
  private final Label words = Words.label("form-question", Styles.QUESTION_WORDS);
  private final Label detail = Words.label("form-question-detail");
  private final Button yes = answer("form-yes");
  private final Button no = answer("form-no");
  private Node before;

  Asking() {
    getStyleClass().add(Styles.QUESTION);
    VBox text = new VBox(words, detail);
    text.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(text, Priority.ALWAYS);
    VBox answers = new VBox(yes, no);
    answers.getStyleClass().add(Styles.ANSWERS);
    answers.setMinWidth(Region.USE_PREF_SIZE);
    getChildren().addAll(new Sign(Sign.Kind.HELD), text, answers);
    hide();
  }

  void ask(String question, String more, String yesWords, Text noWords, Runnable ifYes) {
    words.setText(question);
    detail.setText(more);
    yes.setText(yesWords);
    no.setText(noWords.with());
    yes.setOnAction(
        pressed -> {
          goBack();
          ifYes.run();
        });
    no.setOnAction(pressed -> goBack());
    no.setAccessibleText(question + ". " + more + " " + no.getText());
    if (!isVisible()) {
      before = getScene().getFocusOwner();
    }
    setVisible(true);
    setManaged(true);
    no.requestFocus();
  }

  /** Takes the question away; the focus returns to where it was. */
  void goBack() {
    hide();
    if (before != null) {
      before.requestFocus();
    }
  }

  private void hide() {
    setVisible(false);
    setManaged(false);
  }

  private static Button answer(String id) {
    Button button = new Button();
    button.setId(id);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    button.getStyleClass().setAll(Styles.ANSWER);
    return button;
  }
}
