package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Styles;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Two sessions held against each other: first they are chosen, then the answer is shown. */
final class ComparisonPane extends VBox {
  private final MarkingPane marking;
  private final ChangesPane changes;

  ComparisonPane(ComparisonModel model, Supplier<SessionWords> words) {
    getStyleClass().add(Styles.LEDGER_SIDE);
    marking = new MarkingPane(model, words.get());
    changes = new ChangesPane(model, words.get());
    getChildren()
        .addAll(
            Showing.words("ledger-compare-problem", model.problem(), Styles.PROBLEM),
            grown(Showing.when(model.page().isNull(), marking)),
            grown(Showing.when(model.page().isNotNull(), changes)));
    setOnKeyPressed(
        pressed -> {
          if (pressed.getCode() == KeyCode.ESCAPE && model.page().get() != null) {
            model.back();
            pressed.consume();
          }
        });
    // Only what can be seen can have the focus.
    changes
        .visibleProperty()
        .subscribe(
            (before, now) -> {
              if (now) {
                changes.focus();
              } else if (isVisible()) {
                marking.focus();
              }
            });
  }

  private static Node grown(Node node) {
    VBox.setVgrow(node, Priority.ALWAYS);
    return node;
  }
}
