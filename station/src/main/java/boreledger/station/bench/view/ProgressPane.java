package boreledger.station.bench.view;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.PlanProgress;
import boreledger.station.bench.model.PlanProgress.Part;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How far the plan is, cylinder by cylinder. */
final class ProgressPane extends BorderPane {
  // More parts than this want the whole width.
  private static final int MOST_BESIDE_WORDS = 9;

  // Of more than these, only the one to gauge now has words.
  private static final int MOST_WITH_WORDS = 17;

  private final Label words = Words.fixed("", Styles.PROGRESS_WORDS);
  private final Label left = Words.fixed("", Styles.PROGRESS_LEFT);
  private final HBox parts = new HBox();

  ProgressPane(ObservableValue<PlanProgress> progress) {
    setId("progress");
    words.setId("progress-words");
    left.setId("progress-left");
    setCenter(parts);
    progress.subscribe(this::show);
  }

  private void show(PlanProgress progress) {
    words.setText(progress.words());
    left.setText(progress.left());
    left.setVisible(!progress.left().isEmpty());
    left.setManaged(left.isVisible());
    boolean beside = progress.parts().size() <= MOST_BESIDE_WORDS;
    setTop(null);
    setLeft(null);
    if (beside) {
      setLeft(told(new VBox(words, left)));
    } else {
      setTop(told(new HBox(words, left)));
    }
    boolean allWords = progress.parts().size() <= MOST_WITH_WORDS;
    parts.getStyleClass().setAll(allWords ? Styles.PARTS : Styles.PARTS_DENSE);
    parts
        .getChildren()
        .setAll(progress.parts().stream().map(each -> part(each, allWords || each.now())).toList());
  }

  private static Node told(Pane words) {
    words.getStyleClass().add(Styles.PROGRESS_TOLD);
    return words;
  }

  private static Node part(Part part, boolean withWords) {
    ProgressBar bar = new ProgressBar((double) part.done() / part.planned());
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setMinWidth(0);
    bar.setAccessibleText(part.spoken());
    VBox box = new VBox(bar);
    box.getStyleClass().add(Styles.PART);
    if (withWords) {
      HBox label = new HBox(Words.fixed(part.label()));
      label.getStyleClass().add(Styles.PART_LABEL);
      box.getChildren().add(0, label);
      box.getChildren().add(Words.fixed(part.count(), Styles.MUTED));
      if (part.now()) {
        label.getChildren().add(0, new Sign(Sign.Kind.NOW));
        box.getStyleClass().add(Styles.PART_NOW);
      }
    }
    HBox.setHgrow(box, Priority.ALWAYS);
    box.setPrefWidth(1);
    return box;
  }
}
