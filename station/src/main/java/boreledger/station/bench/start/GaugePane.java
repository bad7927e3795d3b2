package boreledger.station.bench.start;

import boreledger.drivers.serial.PortIdentity;
import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import java.io.File;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** The gauge: the practice gauge, or one on a port with its profile, and whether it speaks. */
final class GaugePane extends Card {
  private final StartModel model;
  private final VBox ports = new VBox();

  GaugePane(StartModel model) {
    super(Text.START_GAUGE.with());
    this.model = model;
    Map<Boolean, String> words = new LinkedHashMap<>();
    words.put(true, Text.START_PRACTICE_GAUGE.with());
    words.put(false, Text.START_GAUGE_ON_PORT.with());
    Label practice = Words.label(null, Styles.MUTED);
    practice.setText(Text.START_PRACTICE_HINT.with());
    VBox real = new VBox(portField(), ports, profileField(), trial());
    real.getStyleClass().add(Styles.FIELDS);
    model
        .practising()
        .subscribe(
            practising -> {
              show(practice, practising);
              show(real, !practising);
            });
    getChildren().addAll(new Choice<>(words, model.practising().asObject()), practice, real);
    ports.getStyleClass().add(Styles.FIELD);
    model.ports().addListener((ListChangeListener<PortIdentity>) change -> showPorts());
    showPorts();
  }

  private static void show(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }

  private Field portField() {
    TextField port = new TextField();
    port.setId("port");
    port.setPromptText(Text.START_PORT_PROMPT.with());
    port.textProperty().bindBidirectional(model.port());
    return new Field(Text.START_PORT.with(), port);
  }

  private void showPorts() {
    ports.getChildren().clear();
    for (PortIdentity each : model.ports()) {
      Hyperlink link = new Hyperlink(each.path() + "  " + each.description());
      link.getStyleClass().add(Styles.RECENT);
      link.setOnAction(pressed -> model.port().set(each.path()));
      ports.getChildren().add(link);
    }
    if (model.ports().isEmpty()) {
      Label none = Words.label(null, Styles.MUTED);
      none.setText(Text.START_NO_PORTS.with());
      ports.getChildren().add(none);
    }
    Hyperlink again = new Hyperlink(Text.START_LOOK_AGAIN.with());
    again.getStyleClass().add(Styles.RECENT);
    again.setOnAction(pressed -> model.lookForPorts());
    ports.getChildren().add(again);
  }

  private Field profileField() {
    ComboBox<ProfileChoice> profiles = new ComboBox<>(model.profiles());
    profiles.setId("profile");
    profiles.valueProperty().bindBidirectional(model.profile());
    Hyperlink own = new Hyperlink(Text.START_OWN_PROFILE.with());
    own.getStyleClass().add(Styles.RECENT);
    own.setOnAction(pressed -> chooseProfile());
    Field field = new Field(Text.START_PROFILE.with(), profiles);
    field.getChildren().add(own);
    return field;
  }

  private void chooseProfile() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(Text.START_OWN_PROFILE.with());
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(Text.START_PROFILE_FILES.with(), "*.gauge.toml"));
    File chosen = chooser.showOpenDialog(getScene().getWindow());
    if (chosen != null) {
      model.takeProfile(chosen.toPath());
    }
  }

  private VBox trial() {
    Button listen = new Button();
    listen.setId("trial");
    Trial trial = model.trial();
    trial
        .listening()
        .subscribe(on -> listen.setText((on ? Text.START_TRIAL_STOP : Text.START_TRIAL).with()));
    listen.setOnAction(
        pressed -> {
          if (trial.listening().get()) {
            trial.stop();
          } else {
            trial.start(model.profile().get().gauge(), model.port().get().strip());
          }
        });
    listen.disableProperty().bind(model.port().isEmpty());
    Label heard = Words.label("heard", Styles.HEARD);
    heard
        .textProperty()
        .bind(Bindings.createStringBinding(() -> String.join("\n", trial.lines()), trial.lines()));
    FlowPane buttons = new FlowPane(listen);
    buttons.getStyleClass().add(Styles.CHOICES);
    VBox whole = new VBox(buttons, heard);
    whole.getStyleClass().add(Styles.FIELD);
    return whole;
  }
}
