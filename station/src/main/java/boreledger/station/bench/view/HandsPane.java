package boreledger.station.bench.view;

import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.Command;
import boreledger.station.bench.words.BenchText;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/**
 * What a person may ask for while gauging, each with its key. While keys are being chosen the same
 * buttons wait for the key that they shall have.
 */
final class HandsPane extends VBox {
  private final BenchModel model;
  private final KeyChoices keys;
  private final BooleanProperty choosing = new SimpleBooleanProperty(false);
  private final Label how = Words.label("keys-how", Styles.MUTED);
  private Command waiting;

  HandsPane(BenchModel model, KeyChoices keys) {
    this.model = model;
    this.keys = keys;
    getStyleClass().add(Styles.HANDS);
    FlowPane buttons = new FlowPane();
    buttons.getStyleClass().add(Styles.CHOICES);
    for (Command command : Command.values()) {
      buttons.getChildren().add(button(command));
    }
    buttons.getChildren().add(choose());
    how.visibleProperty().bind(choosing);
    how.managedProperty().bind(choosing);
    getChildren().addAll(buttons, how);
  }

  private Button button(Command command) {
    Button button = new Button();
    button.setId("command-" + command.id());
    button.getStyleClass().setAll(Styles.HAND);
    button.setOnAction(pressed -> asked(command));
    keys.key(command)
        .subscribe(
            key -> button.setText(BenchText.COMMAND_KEY.with(command.words(), key.getName())));
    if (command == Command.CONFIRM || command == Command.LEAVE) {
      // While gauging, they stand beside the question that they answer.
      button.visibleProperty().bind(choosing);
      button.managedProperty().bind(choosing);
    }
    return button;
  }

  private ToggleButton choose() {
    ToggleButton button = new ToggleButton();
    button.setId("choose-keys");
    button.getStyleClass().setAll(Styles.HAND);
    button.selectedProperty().bindBidirectional(choosing);
    choosing.subscribe(
        now -> {
          waiting = null;
          how.setText(BenchText.KEYS_HOW.with());
          button.setText((now ? BenchText.KEYS_DONE : BenchText.KEYS_CHOOSE).with());
        });
    return button;
  }

  private void asked(Command command) {
    if (choosing.get()) {
      waiting = command;
      how.setText(BenchText.KEYS_PRESS.with(command.words()));
    } else {
      model.perform(command);
    }
  }

  /**
   * Takes a key that was pressed anywhere in the room.
   *
   * @return whether it was used
   */
  boolean take(KeyEvent event) {
    boolean alone = !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
    if (waiting != null) {
      chosen(event.getCode(), alone && !event.isShiftDown());
      return true;
    }
    Optional<Command> command =
        alone && !choosing.get() ? keys.command(event.getCode()) : Optional.empty();
    command.ifPresent(model::perform);
    return command.isPresent();
  }

  private void chosen(KeyCode key, boolean alone) {
    if (key == KeyCode.ESCAPE) {
      waiting = null;
      how.setText(BenchText.KEYS_HOW.with());
      return;
    }
    Optional<String> refusal =
        alone ? keys.choose(waiting, key) : Optional.of(BenchText.KEYS_ALONE.with());
    how.setText(refusal.orElseGet(() -> BenchText.KEYS_SET.with(waiting.words(), key.getName())));
    if (refusal.isEmpty()) {
      waiting = null;
    }
  }
}
