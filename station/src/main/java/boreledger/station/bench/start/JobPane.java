package boreledger.station.bench.start;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.EngineDrawing;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.StartText;
import java.nio.file.Path;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The job: the one that is open, others of late, and the invented engine to practise on. */
final class JobPane extends Card {
  private final JobChoice job;
  private final Label name = Words.label("start-job", Styles.JOB_NAME);
  private final VBox details = new VBox();
  private final VBox recent = new VBox();
  private final EngineDrawing engine = new EngineDrawing("start-engine");
  private final FileAsking files;

  JobPane(JobChoice job, Runnable practising, FileAsking files) {
    super(StartText.JOB.with());
    this.job = job;
    this.files = files;
    Button open = new Button(StartText.OPEN_JOB.with());
    open.setId("open-job");
    open.setOnAction(pressed -> choose());
    Button practise = new Button(StartText.PRACTISE_NOW.with());
    practise.setId("practise-now");
    practise.setOnAction(pressed -> practising.run());
    practise.setMaxWidth(Double.MAX_VALUE);
    practise.setWrapText(true);
    Button fresh = new Button(StartText.NEW_JOB.with());
    fresh.setId("new-job");
    fresh.setOnAction(pressed -> job.make());
    Button edit = new Button(StartText.EDIT_JOB.with());
    edit.setId("edit-job");
    edit.setOnAction(pressed -> job.edit());
    edit.disableProperty().bind(job.card().isNull());
    FlowPane buttons = new FlowPane(open, fresh, edit);
    buttons.getStyleClass().add(Styles.CHOICES);
    details.getStyleClass().add(Styles.FIELD);
    recent.getStyleClass().add(Styles.FIELD);
    Label first = Words.label(null, Styles.MUTED);
    first.setText(StartText.PRACTISE_WHY.with());
    getChildren().addAll(name, engine, details, buttons, recent, first, practise);
    // Whoever has a job open knows what practising is.
    first.visibleProperty().bind(job.card().isNull());
    first.managedProperty().bind(first.visibleProperty());
    job.card().subscribe(this::show);
    job.recent().addListener((ListChangeListener<Path>) change -> showRecent());
    showRecent();
  }

  private void show(JobCard card) {
    name.setText(card == null ? StartText.NO_JOB.with() : card.name());
    details.getChildren().clear();
    engine.setVisible(card != null);
    engine.setManaged(card != null);
    if (card != null) {
      engine.show(card.job().engine().arrangement(), card.job().engine().cylinders());
      card.details().forEach(line -> details.getChildren().add(words(line)));
      details.getChildren().add(muted(StartText.JOB_FILE.with(card.file().toString())));
      details.getChildren().add(muted(StartText.LEDGER.with(job.ledger().toString())));
    }
  }

  private void showRecent() {
    recent.getChildren().clear();
    if (!job.recent().isEmpty()) {
      recent.getChildren().add(muted(StartText.RECENT.with()));
    }
    for (Path file : job.recent()) {
      Hyperlink link = new Hyperlink(file.getFileName().toString());
      link.getStyleClass().add(Styles.RECENT);
      link.setAccessibleText(file.toString());
      link.setOnAction(pressed -> job.open(file));
      recent.getChildren().add(link);
    }
  }

  private void choose() {
    FileAsking.Wish wish =
        new FileAsking.Wish(
            StartText.OPEN_JOB.with(), job.folder(), "", StartText.JOB_FILES.with(), ".job.toml");
    files.toOpen(wish, getScene().getWindow()).ifPresent(job::open);
  }

  private static Label words(String sentence) {
    Label label = Words.label(null);
    label.setText(sentence);
    return label;
  }

  private static Label muted(String sentence) {
    Label label = Words.label(null, Styles.MUTED);
    label.setText(sentence);
    return label;
  }
}
