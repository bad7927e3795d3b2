package boreledger.station.bench.lesson;

import boreledger.station.app.LessonEvent;
import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Presence;
import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LessonText;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What arrives, and what is known from it. */
final class HeardPane extends Card {
  private final Label known = Words.label("lesson-known");
  private final Label shown = Words.label("lesson-shown", Styles.MUTED);
  private final Label readings = Words.label("lesson-readings", Styles.MUTED);
  private final Sign sign = new Sign(Sign.Kind.OPEN);

  private final LessonModel model;

  HeardPane(LessonModel model) {
    super(LessonText.ARRIVES.with());
    this.model = model;
    Label listening = Words.label("lesson-listening", Styles.MUTED);
    listening.textProperty().bind(model.listening());
    Presence.when(model.listening().map(words -> !words.isEmpty()), listening);
    Label heard = Words.label("lesson-heard", Styles.HEARD);
    heard
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    model.lines().isEmpty()
                        ? LessonText.NOTHING_YET.with()
                        : String.join("\n", model.lines()),
                model.lines()));
    HBox verdict = new HBox(sign, known);
    verdict.getStyleClass().add(Styles.FORM_LINE);
    HBox.setHgrow(known, Priority.ALWAYS);
    VBox knowing = new VBox(verdict, readings, shown);
    knowing.getStyleClass().add(Styles.FIELD);
    getChildren().addAll(listening, heard, knowing);
    model.told().subscribe(this::tell);
  }

  private void tell(LessonEvent.Told told) {
    boolean isCertain = told != null && told.learned().certain();
    sign.show(isCertain ? Sign.Kind.TAKEN : Sign.Kind.OPEN);
    known.setText(
        told == null
            ? LessonText.NOTHING_SHOWN.with()
            : LessonWords.verdict(told, model.source().kind().get()));
    say(readings, told == null ? List.of() : LessonWords.readings(told.learned()));
    say(shown, told == null ? List.of() : List.of(LessonWords.shown(told)));
  }

  private static void say(Label label, List<String> lines) {
    label.setText(String.join("\n", lines));
    label.setVisible(!label.getText().isEmpty());
    label.setManaged(label.isVisible());
  }
}
