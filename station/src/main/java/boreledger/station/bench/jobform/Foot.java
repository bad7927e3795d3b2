package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.bench.words.Text;
import boreledger.station.job.draft.Place;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How the draft stands, where it goes, and the two ways out. */
final class Foot extends VBox {
  private static final int MOST_NAMED = 3;

  private final FormModel model;
  private final Sign sign = new Sign(Sign.Kind.NONE);
  private final Label state = Words.label("form-state", Styles.FORM_STATE);
  private final TextField file = new TextField();
  private final Button save = button("form-save", JobFormText.SAVE);
  private final Button choose = button("form-choose-file", JobFormText.CHOOSE_FILE);
  private final Button leave = button("form-leave", JobFormText.LEAVE);

  Foot(FormModel model, Runnable saving, Runnable leaving, Runnable choosing) {
    this.model = model;
    getStyleClass().add(Styles.FORM_FOOT);
    Label label = Words.fixed(JobFormText.FILE.with(), Styles.FORM_LABEL);
    label.setLabelFor(file);
    file.setId("form-file");
    file.getStyleClass().setAll(Styles.FORM_INPUT);
    file.setAccessibleText(JobFormText.FILE.with());
    HBox.setHgrow(file, Priority.ALWAYS);
    save.setOnAction(pressed -> saving.run());
    choose.setOnAction(pressed -> choosing.run());
    leave.setOnAction(pressed -> leaving.run());
    HBox.setHgrow(state, Priority.ALWAYS);
    HBox said = new HBox(sign, state);
    HBox row = new HBox(label, file, choose, save, leave);
    said.getStyleClass().add(Styles.FORM_LINE);
    row.getStyleClass().add(Styles.FORM_LINE);
    getChildren().addAll(said, row);
    refresh();
  }

  TextField file() {
    return file;
  }

  void refresh() {
    List<Place> problems = model.problems();
    List<Place> open = model.open();
    if (problems.size() > 1) {
      String count = Integer.toString(problems.size());
      say(Sign.Kind.REFUSED, JobFormText.STATE_PROBLEMS.with(count, names(problems, 1)));
    } else if (!problems.isEmpty()) {
      say(Sign.Kind.REFUSED, JobFormText.STATE_PROBLEM.with(names(problems, 1)));
    } else if (!open.isEmpty()) {
      say(Sign.Kind.OPEN, JobFormText.STATE_OPEN.with(names(open, MOST_NAMED)));
    } else {
      Text saved = model.isChanged() ? JobFormText.STATE_CHANGED : JobFormText.STATE_UNCHANGED;
      say(Sign.Kind.TAKEN, saved.with(JobFormText.STATE_READY.with()));
    }
  }

  void say(Sign.Kind kind, String words) {
    sign.show(kind);
    state.setText(words);
  }

  private static String names(List<Place> places, int most) {
    String names = places.stream().limit(most).map(Foot::name).collect(Collectors.joining(", "));
    return places.size() > most && most > 1 ? names + " \u2026" : names;
  }

  private static String name(Place place) {
    String label = FieldWords.of(place.field()).label().with();
    SectionWords section = SectionWords.of(place.field().section());
    String part =
        section.part() == null
            ? section.title().with()
            : section.part().with(Integer.toString(place.index() + 1));
    return JobFormText.PART_BUTTON.with(part, label);
  }

  private static Button button(String id, Text words) {
    Button button = new Button(words.with());
    button.setId(id);
    button.getStyleClass().setAll(Styles.FORM_BUTTON);
    button.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    return button;
  }
}
