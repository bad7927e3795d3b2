package boreledger.station.bench.view;

import boreledger.station.bench.model.PlanProgress;
import boreledger.station.bench.model.PlanProgress.Part;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How far the plan is, cylinder by cylinder. */
final class ProgressPane extends BorderPane {
  // More parts than this want the whole width.
  private static final int MOST_BESIDE_WORDS = 9;

  private final Label words = Words.fixed("", Styles.PROGRESS_WORDS);
  private final HBox parts = new HBox();

  ProgressPane(ObservableValue<PlanProgress> progress) {
    setId("progress");
    getStyleClass().add(Styles.PROGRESS);
    words.setId("progress-words");
    parts.getStyleClass().add(Styles.PARTS);
    setCenter(parts);
    progress.subscribe(this::show);
  }

  private void show(PlanProgress progress) {
    words.setText(progress.words());
    boolean beside = progress.parts().size() <= MOST_BESIDE_WORDS;
    setTop(null);
    setLeft(null);
    if (beside) {
      setLeft(words);
    } else {
      setTop(words);
    }
    parts.getChildren().setAll(progress.parts().stream().map(ProgressPane::part).toList());
  }

  private static Node part(Part part) {
    ProgressBar bar = new ProgressBar((double) part.done() / part.planned());
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setMinWidth(0);
    bar.setAccessibleText(part.spoken());
    HBox label = new HBox(Words.fixed(part.label()));
    label.getStyleClass().add(Styles.PART_LABEL);
    VBox box = new VBox(label, bar, Words.fixed(part.count(), Styles.MUTED));
    box.getStyleClass().add(Styles.PART);
    if (part.now()) {
      box.getStyleClass().add(Styles.PART_NOW);
      label.getChildren().add(0, new Sign(Sign.Kind.NOW));
    }
    HBox.setHgrow(box, Priority.ALWAYS);
    box.setPrefWidth(1);
    return box;
  }
}
