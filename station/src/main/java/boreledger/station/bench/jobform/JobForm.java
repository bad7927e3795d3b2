package boreledger.station.bench.jobform;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.TextFile;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.DraftCheck;
import boreledger.station.job.draft.DraftReader;
import boreledger.station.job.draft.JobDraft;
import boreledger.station.table.Tables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * A job file made or changed in forms. It reads and writes one small file and does so on the
 * screen's thread. A file that is not understood is not shown in part: its problem is told instead.
 */
public final class JobForm extends StackPane {
  private final Runnable cancelled;
  private Runnable begin = () -> {};

  /**
   * A form.
   *
   * @param file the job file to change; null for a new job in the folder where the program was
   *     started, a folder for a new job in it
   * @param tables what materials and rules are chosen from, and what jobs are held against
   * @param appearance the unit that lengths are shown and typed in
   * @param files asks for a file
   * @param saved told the file each time it was saved
   * @param cancelled called when a person leaves without saving
   */
  public JobForm(
      Path file,
      Tables tables,
      Appearance appearance,
      FileAsking files,
      Consumer<Path> saved,
      Runnable cancelled) {
    this.cancelled = cancelled;
    setId("job-form");
    setMinSize(0, 0);
    boolean isNew = file == null || Files.isDirectory(file);
    try {
      TextFile text = isNew ? null : TextFile.read(file, StrictToml.MAX_BYTES);
      JobDraft draft =
          isNew
              ? FormModel.fresh(unit(appearance))
              : FormModel.filled(DraftReader.read(file.toString(), text.text()));
      FormModel model = new FormModel(new DraftCheck(tables), draft);
      model.showIn(appearance.unit().get());
      Path folder = (isNew && file != null ? file : Path.of("")).toAbsolutePath();
      FormPane pane =
          new FormPane(
              model,
              new FormSaving(isNew ? null : file, isNew ? null : text.text()),
              new Choices(tables),
              appearance,
              files,
              isNew ? null : file,
              folder,
              saved,
              cancelled);
      getChildren().add(pane);
      begin = pane::begin;
    } catch (FileProblem e) {
      getChildren().add(unreadable(e.getMessage()));
    }
  }

  /** Puts the focus where a person begins; called once the form is in the window. */
  public void begin() {
    begin.run();
  }

  private Node unreadable(String problem) {
    Label title = Words.label("form-title", Styles.FORM_TITLE);
    title.setText(JobFormText.UNREADABLE.with());
    Label words = Words.label("form-unreadable", Styles.FORM_PROBLEM_WORDS);
    words.setText(JobFormText.UNREADABLE_DETAIL.with(problem));
    Button leave = new Button(JobFormText.LEAVE.with());
    leave.setId("form-leave");
    leave.getStyleClass().setAll(Styles.FORM_BUTTON);
    leave.setOnAction(pressed -> cancelled.run());
    begin = leave::requestFocus;
    addEventFilter(KeyEvent.KEY_PRESSED, this::escape);
    VBox pane = new VBox(title, words, leave);
    pane.getStyleClass().add(Styles.FORM);
    return pane;
  }

  private void escape(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      event.consume();
      cancelled.run();
    }
  }

  private static DisplayUnit unit(Appearance appearance) {
    DisplayUnit wanted = appearance.unit().get();
    return wanted == null ? DisplayUnit.MM : wanted;
  }
}
