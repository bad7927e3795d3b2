package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.EngineDrawing;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.bench.words.StartText;
import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.JobFileName;
import boreledger.station.job.draft.Place;
import boreledger.station.job.draft.WrittenDraft;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;

/** The form with its keys: Enter goes on, Ctrl S saves, Escape leaves. */
final class FormPane extends VBox {
  private final FormModel model;
  private final FormSaving saving;
  private final Appearance appearance;
  private final Consumer<Path> saved;
  private final Runnable left;
  private final Path folder;
  private final FileAsking files;
  private final Label title = Words.label("form-title", Styles.FORM_TITLE);
  private final FormPage page;
  private final Outline outline;
  private final Foot foot;
  private final EngineDrawing engine = new EngineDrawing("form-engine");
  private final Asking asking = new Asking();
  private Subscription around = Subscription.EMPTY;
  private String offered = "";
  private FieldCell come;

  /**
   * A form.
   *
   * @param files asks for a file
   * @param file the file that is changed; null for a new job
   * @param folder where the file of a new job is offered
   */
  FormPane(
      FormModel model,
      FormSaving saving,
      Choices choices,
      Appearance appearance,
      FileAsking files,
      Path file,
      Path folder,
      Consumer<Path> saved,
      Runnable left) {
    this.model = model;
    this.saving = saving;
    this.appearance = appearance;
    this.folder = folder;
    this.saved = saved;
    this.files = files;
    this.left = left;
    page = new FormPage(model, choices);
    outline = new Outline(model, page::begin);
    foot = new Foot(model, () -> save(false), this::leave, this::choose);
    if (file != null) {
      foot.file().setText(file.toString());
    }
    build();
    model.onChange(this::refresh);
    refresh();
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    sceneProperty().subscribe(this::joined);
  }

  private void build() {
    getStyleClass().add(Styles.FORM);
    Label intro = Words.label("form-intro", Styles.FORM_HELP);
    intro.setText(JobFormText.INTRO.with());
    VBox head = new VBox(title, intro);
    head.getStyleClass().add(Styles.FORM_HEAD);
    VBox side = new VBox(outline, engine);
    VBox.setVgrow(engine, Priority.ALWAYS);
    HBox middle = new HBox(side, page);
    middle.getStyleClass().add(Styles.FORM_MIDDLE);
    middle.setMinHeight(0);
    HBox.setHgrow(page, Priority.ALWAYS);
    VBox.setVgrow(middle, Priority.ALWAYS);
    getChildren().addAll(head, middle, asking, foot);
  }

  private void refresh() {
    String name = model.draft().text(Field.NAME);
    title.setText(
        name.isBlank() ? JobFormText.TITLE_NEW.with() : JobFormText.TITLE_EDIT.with(name));
    offer(name);
    page.refresh();
    EngineOfDraft.show(model.draft(), engine);
    outline.refresh();
    foot.refresh();
  }

  /** A new job's file is named after it until a person names it otherwise. */
  private void offer(String name) {
    if (foot.file().getText().equals(offered)) {
      offered = name.isBlank() ? "" : folder.resolve(JobFileName.of(name)).toString();
      foot.file().setText(offered);
    }
  }

  /** Where the file goes, by the system's own window, in the folder of the file named now. */
  private void choose() {
    Path named = FormSaving.path(foot.file().getText()).orElse(folder.resolve("my.job.toml"));
    FileAsking.Wish wish =
        new FileAsking.Wish(
            JobFormText.CHOOSE_FILE.with(),
            named.getParent(),
            named.getFileName().toString(),
            StartText.JOB_FILES.with(),
            ".job.toml");
    files
        .toSave(wish, getScene().getWindow())
        .ifPresent(chosen -> foot.file().setText(chosen.toString()));
  }

  private void joined(Scene scene) {
    around.unsubscribe();
    around =
        scene == null
            ? Subscription.EMPTY
            : appearance
                .unit()
                .subscribe(model::showIn)
                .and(scene.focusOwnerProperty().subscribe(this::focused));
  }

  /** By the window's focus alone: lists say that they had it when they are drawn first. */
  private void focused(Node node) {
    FieldCell now = node == null ? null : page.cellOf(node);
    if (come != null && now != come) {
      model.leave(come.place());
    }
    come = now;
    if (node != null) {
      page.reveal(node);
    }
  }

  private void pressed(KeyEvent event) {
    if (event.isShortcutDown() && event.getCode() == KeyCode.S) {
      save(false);
    } else if (event.getCode() == KeyCode.ESCAPE && !isListOpen(event)) {
      escape();
    } else if (event.getCode() != KeyCode.ENTER || isListOpen(event) || !goOn(event)) {
      return;
    }
    event.consume();
  }

  private static boolean isListOpen(KeyEvent event) {
    return event.getTarget() instanceof ComboBoxBase<?> box && box.isShowing();
  }

  private boolean goOn(KeyEvent event) {
    Node node = (Node) event.getTarget();
    boolean isButton = node instanceof ButtonBase && !(node instanceof ToggleButton);
    if (isButton) {
      return false;
    }
    if (node == foot.file()) {
      save(false);
    } else if (page.cellOf(node) != null && !page.beginAfter(node)) {
      foot.file().requestFocus();
    }
    return true;
  }

  private void escape() {
    if (asking.isVisible()) {
      asking.goBack();
    } else {
      leave();
    }
  }

  private void leave() {
    if (model.isChanged()) {
      asking.ask(
          JobFormText.ASK_LEAVE.with(),
          JobFormText.ASK_LEAVE_DETAIL.with(),
          JobFormText.ASK_LEAVE_YES.with(),
          JobFormText.ASK_LEAVE_NO,
          left);
    } else {
      left.run();
    }
  }

  private void save(boolean isSure) {
    model.showAll();
    List<Place> problems = model.problems();
    if (!problems.isEmpty()) {
      page.begin(problems.get(0));
      return;
    }
    String text = WrittenDraft.of(model.draft()).text();
    FormSaving.Outcome outcome = saving.save(foot.file().getText(), text, isSure);
    if (outcome instanceof FormSaving.Outcome.Saved done) {
      model.becameSaved();
      saved.accept(done.file());
    } else if (outcome instanceof FormSaving.Outcome.Ask ask) {
      asking.ask(ask.question(), ask.detail(), ask.yes(), JobFormText.ASK_BACK, () -> save(true));
    } else if (outcome instanceof FormSaving.Outcome.Failed failed) {
      foot.say(Sign.Kind.REFUSED, failed.words());
      foot.file().requestFocus();
    }
  }

  /** Puts the focus where a person begins. */
  void begin() {
    page.begin();
  }
}
