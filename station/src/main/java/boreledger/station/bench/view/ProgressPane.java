package boreledger.station.bench.view;

import boreledger.station.bench.model.PlanProgress;
import boreledger.station.bench.model.PlanProgress.Part;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How far the plan is, cylinder by cylinder. */
final class ProgressPane extends HBox {
  private final Label words = Words.fixed("", Styles.PROGRESS_WORDS);
  private final HBox parts = new HBox();

  ProgressPane(ObservableValue<PlanProgress> progress) {
    setId("progress");
    getStyleClass().add(Styles.PROGRESS);
    words.setId("progress-words");
    parts.getStyleClass().add(Styles.PARTS);
    HBox.setHgrow(parts, Priority.ALWAYS);
    getChildren().addAll(words, parts);
    progress.subscribe(this::show);
  }

  private void show(PlanProgress progress) {
    words.setText(progress.words());
    parts.getChildren().setAll(progress.parts().stream().map(ProgressPane::part).toList());
  }

  private static Node part(Part part) {
    ProgressBar bar = new ProgressBar((double) part.done() / part.planned());
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setMinWidth(0);
    bar.setAccessibleText(part.spoken());
    Label label = Words.fixed(part.label());
    Label count = Words.fixed(part.count(), Styles.MUTED);
    VBox box = new VBox(new HBox(label), bar, count);
    box.getStyleClass().add(Styles.PART);
    if (part.now()) {
      box.getStyleClass().add(Styles.PART_NOW);
    }
    HBox.setHgrow(box, Priority.ALWAYS);
    box.setPrefWidth(1);
    return box;
  }
}
