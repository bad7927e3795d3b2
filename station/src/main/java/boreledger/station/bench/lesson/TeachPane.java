package boreledger.station.bench.lesson;

import boreledger.station.app.LessonEvent;
import boreledger.station.bench.lesson.LessonSource.Kind;
import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Presence;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LessonText;
import boreledger.station.bench.words.Text;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What to show the gauge next, and what its display shows. */
final class TeachPane extends Card {
  private final LessonModel model;
  private final TextField typed = new TextField();
  private final Button begin;
  private final Label ask = Words.label("lesson-ask", Styles.JOB_NAME);

  TeachPane(LessonModel model, Node ports, FileAsking files, Supplier<Path> folder) {
    super(LessonText.TEACH.with());
    this.model = model;
    begin = button("lesson-begin", LessonText.BEGIN, model::begin);
    VBox value = new VBox(ask, valueField(), buttons());
    value.getStyleClass().add(Styles.FIELDS);
    getChildren().addAll(source(ports, files, folder), value);
    Presence.when(model.going(), value);
    model.told().subscribe(this::tell);
    model
        .going()
        .subscribe(
            going -> {
              if (going) {
                typed.requestFocus();
              }
            });
  }

  void begin() {
    begin.requestFocus();
  }

  private Node source(Node ports, FileAsking files, Supplier<Path> folder) {
    Map<Kind, String> words = new LinkedHashMap<>();
    words.put(Kind.PORT, LessonText.SOURCE_PORT.with());
    words.put(Kind.RECORDING, LessonText.SOURCE_RECORDING.with());
    Node recording = recording(files, folder);
    ObservableValue<Boolean> isPort = model.source().kind().map(Kind.PORT::equals);
    Presence.when(isPort, ports);
    Presence.when(isPort.map(yes -> !yes), recording);
    VBox choosing = new VBox(new Choice<>(words, model.source().kind()), ports, recording);
    choosing.getStyleClass().add(Styles.FIELDS);
    FlowPane buttons = new FlowPane(begin);
    buttons.getStyleClass().add(Styles.CHOICES);
    choosing.getChildren().addAll(problem("lesson-source-problem", model.sourceProblem()), buttons);
    Presence.when(model.going().map(going -> !going), choosing);
    return choosing;
  }

  private Node recording(FileAsking files, Supplier<Path> folder) {
    TextField file = new TextField();
    file.setId("lesson-recording");
    file.textProperty().bindBidirectional(model.source().recording());
    Field field = new Field(LessonText.RECORDING.with(), file);
    Hyperlink choose = new Hyperlink(LessonText.RECORDING_CHOOSE.with());
    choose.setId("lesson-recording-choose");
    choose.getStyleClass().add(Styles.RECENT);
    FileAsking.Wish wish =
        new FileAsking.Wish(
            LessonText.RECORDING_CHOOSE.with(),
            folder.get(),
            "",
            LessonText.RECORDINGS.with(),
            ".capture.jsonl");
    choose.setOnAction(
        pressed ->
            files
                .toOpen(wish, getScene().getWindow())
                .ifPresent(chosen -> model.source().recording().set(chosen.toString())));
    field.getChildren().add(choose);
    return field;
  }

  private Node valueField() {
    typed.setId("lesson-typed");
    typed.setPromptText(LessonText.SHOWN_PROMPT.with());
    typed.textProperty().bindBidirectional(model.typed());
    typed.addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            event.consume();
            model.show();
          }
        });
    Field field = new Field(LessonText.SHOWN.with(), typed);
    Label note = Words.label("lesson-typed-note");
    note.textProperty().bind(model.typedNote());
    Presence.when(model.typedNote().map(words -> !words.isEmpty()), note);
    field.getChildren().addAll(problem("lesson-typed-problem", model.typedProblem()), note);
    Presence.when(model.keep().profile().isNull().asObject(), field);
    return field;
  }

  private Node buttons() {
    Button show = button("lesson-show", LessonText.SHOW, model::show);
    Button back = button("lesson-back", LessonText.TAKE_BACK, model::takeBack);
    back.disableProperty().bind(model.told().map(told -> told.shown().isEmpty()).orElse(true));
    Presence.when(model.keep().profile().isNull().asObject(), show);
    FlowPane buttons = new FlowPane(show, back);
    Button next = button("lesson-next", LessonText.NEXT_SETTING, model::tryNext);
    BooleanBinding isPort = model.source().kind().isEqualTo(Kind.PORT);
    Presence.when(isPort.and(model.keep().profile().isNull()).asObject(), next);
    buttons.getChildren().addAll(next, button("lesson-stop", LessonText.STOP, model::stop));
    buttons.getStyleClass().add(Styles.CHOICES);
    return buttons;
  }

  private void tell(LessonEvent.Told told) {
    ask.setText(told == null ? "" : LessonWords.ask(told.learned(), model.source().kind().get()));
    if (model.going().get() && told != null && !told.learned().certain()) {
      typed.requestFocus();
      typed.selectAll();
    }
  }

  private static Button button(String id, Text words, Runnable action) {
    Button button = new Button(words.with());
    button.setId(id);
    button.setOnAction(pressed -> action.run());
    return button;
  }

  static Label problem(String id, ObservableValue<String> words) {
    Label problem = Words.label(id, Styles.PROBLEM);
    problem.textProperty().bind(words);
    Presence.when(words.map(each -> !each.isEmpty()), problem);
    return problem;
  }
}
