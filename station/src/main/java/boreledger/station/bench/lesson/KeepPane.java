package boreledger.station.bench.lesson;

import boreledger.drivers.profile.Reads;
import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Presence;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LessonText;
import boreledger.station.bench.words.StartText;
import boreledger.station.bench.words.Text;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What bytes cannot tell of a gauge, and where its profile goes; there once it is certain. */
final class KeepPane extends Card {
  private static final String ENDING = ".gauge.toml";

  private final KeepModel keep;
  private final FileAsking files;
  private final Supplier<Path> folder;
  private final TextField name;

  KeepPane(LessonModel model, FileAsking files, Supplier<Path> folder) {
    super(LessonText.KEEP.with());
    this.keep = model.keep();
    this.files = files;
    this.folder = folder;
    name = text("lesson-name", keep.name());
    Button write = new Button(LessonText.WRITE.with());
    write.setId("lesson-write");
    write.setOnAction(pressed -> keep.write());
    FlowPane buttons = new FlowPane(write);
    buttons.getStyleClass().add(Styles.CHOICES);
    getChildren()
        .addAll(
            field(LessonText.NAME, name, "lesson-name-problem", keep.nameProblem()),
            reads(),
            maxError(),
            file(),
            buttons);
    Presence.when(keep.profile().map(profile -> true).orElse(false), this);
    keep.profile().addListener((property, before, now) -> begin(before == null && now != null));
  }

  /** A person goes on here as soon as it is certain. */
  private void begin(boolean isNew) {
    if (isNew) {
      if (keep.file().get().isBlank()) {
        keep.file().set(offered().toString());
      }
      name.requestFocus();
    }
  }

  /** A name that no file has yet. */
  private Path offered() {
    Path first = folder.get().resolve("my" + ENDING);
    Path file = first;
    for (int i = 2; Files.exists(file); i++) {
      file = first.resolveSibling("my-" + i + ENDING);
    }
    return file;
  }

  private Node reads() {
    Map<Reads, String> words = new LinkedHashMap<>();
    words.put(Reads.DEVIATION, LessonText.READS_DEVIATION.with());
    words.put(Reads.SIZE, LessonText.READS_SIZE.with());
    Label label = Words.label(null, Styles.FIELD_NAME);
    label.setText(LessonText.READS.with());
    VBox field = new VBox(label, new Choice<>(words, keep.reads()));
    field.getStyleClass().add(Styles.FIELD);
    return field;
  }

  private Node maxError() {
    TextField error = text("lesson-max-error", keep.maxError());
    error.setPromptText(LessonText.MAX_ERROR_PROMPT.with());
    return field(LessonText.MAX_ERROR, error, "lesson-max-error-problem", keep.maxErrorProblem());
  }

  private Node file() {
    VBox field =
        field(
            LessonText.FILE,
            text("lesson-file", keep.file()),
            "lesson-file-problem",
            keep.fileProblem());
    Hyperlink choose = new Hyperlink(LessonText.FILE_CHOOSE.with());
    choose.setId("lesson-file-choose");
    choose.getStyleClass().add(Styles.RECENT);
    choose.setOnAction(
        pressed ->
            files
                .toSave(wish(), getScene().getWindow())
                .ifPresent(chosen -> keep.file().set(chosen.toString())));
    field.getChildren().add(choose);
    return field;
  }

  private FileAsking.Wish wish() {
    return new FileAsking.Wish(
        LessonText.FILE_CHOOSE.with(),
        folder.get(),
        offered().getFileName().toString(),
        StartText.PROFILE_FILES.with(),
        ENDING);
  }

  private TextField text(String id, StringProperty value) {
    TextField field = new TextField();
    field.setId(id);
    field.setOnAction(entered -> keep.write());
    field.textProperty().bindBidirectional(value);
    return field;
  }

  private static VBox field(
      Text words, TextField input, String problemId, ObservableValue<String> problem) {
    Field field = new Field(words.with(), input);
    field.getChildren().add(TeachPane.problem(problemId, problem));
    return field;
  }
}
