package boreledger.station.bench.look;

import boreledger.station.bench.model.Verdict;
import java.util.List;
import javafx.beans.property.IntegerProperty;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/** The cylinders of an engine with the sign of each one's verdict, of which one is chosen. */
public final class CylinderChoice extends FlowPane {
  private final IntegerProperty chosen;

  /** No cylinder yet. */
  public CylinderChoice(IntegerProperty chosen) {
    this.chosen = chosen;
    getStyleClass().add(Styles.CHOICES);
  }

  /** Shows the verdicts of cylinders 1, 2 and so on. */
  public void show(List<Verdict> verdicts) {
    getChildren().clear();
    for (int i = 0; i < verdicts.size(); i++) {
      getChildren().add(button(i + 1, verdicts.get(i)));
    }
  }

  private ToggleButton button(int number, Verdict verdict) {
    ToggleButton button = new ToggleButton(Integer.toString(number));
    button.setId("cylinder-" + number);
    button.getStyleClass().setAll(Styles.CHOICE);
    button.setGraphic(new Sign(VerdictSign.of(verdict.kind())));
    button.setContentDisplay(ContentDisplay.RIGHT);
    button.setAccessibleText(verdict.title() + ": " + verdict.words());
    button.setSelected(chosen.get() == number);
    button.setOnAction(
        pressed -> {
          chosen.set(number);
          button.setSelected(true);
        });
    return button;
  }
}
