package boreledger.station.bench.start;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Presence;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.StartText;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The gauge: the practice gauge, or one on a port with its profile, and whether it speaks. */
final class GaugePane extends Card {
  private final StartModel model;
  private final FileAsking files;

  GaugePane(StartModel model, FileAsking files) {
    super(StartText.GAUGE.with());
    this.model = model;
    this.files = files;
    Map<Boolean, String> words = new LinkedHashMap<>();
    words.put(true, StartText.PRACTICE_GAUGE.with());
    words.put(false, StartText.GAUGE_ON_PORT.with());
    Label practice = Words.label(null, Styles.MUTED);
    practice.setText(StartText.PRACTICE_HINT.with());
    VBox real = new VBox(new PortPane(model.gauge()), profileField(), trial());
    real.getStyleClass().add(Styles.FIELDS);
    Presence.when(model.gauge().practising(), practice);
    Presence.when(model.gauge().practising().not(), real);
    getChildren()
        .addAll(new Choice<>(words, model.gauge().practising().asObject()), practice, real);
  }

  private Field profileField() {
    ComboBox<ProfileChoice> profiles = new ComboBox<>(model.gauge().profiles());
    profiles.setId("profile");
    profiles.valueProperty().bindBidirectional(model.gauge().profile());
    Hyperlink own = new Hyperlink(StartText.OWN_PROFILE.with());
    own.getStyleClass().add(Styles.RECENT);
    own.setOnAction(pressed -> chooseProfile());
    Field field = new Field(StartText.PROFILE.with(), profiles);
    Hyperlink teach = new Hyperlink(StartText.TEACH.with());
    teach.setId("teach");
    teach.getStyleClass().add(Styles.RECENT);
    teach.setOnAction(pressed -> model.teach());
    Label taught = Words.label("taught");
    taught.textProperty().bind(model.taught());
    Presence.when(model.taught().map(words -> !words.isEmpty()), taught);
    field.getChildren().addAll(own, teach, taught);
    return field;
  }

  private void chooseProfile() {
    FileAsking.Wish wish =
        new FileAsking.Wish(
            StartText.OWN_PROFILE.with(),
            model.job().folder(),
            "",
            StartText.PROFILE_FILES.with(),
            ".gauge.toml");
    files.toOpen(wish, getScene().getWindow()).ifPresent(model.gauge()::takeProfile);
  }

  private VBox trial() {
    Button listen = new Button();
    listen.setId("trial");
    Trial trial = model.trial();
    trial
        .listening()
        .subscribe(on -> listen.setText((on ? StartText.TRIAL_STOP : StartText.TRIAL).with()));
    listen.setOnAction(
        pressed -> {
          if (trial.listening().get()) {
            trial.stop();
          } else {
            trial.start(model.gauge().profile().get().gauge(), model.gauge().port().get().strip());
          }
        });
    listen.disableProperty().bind(model.gauge().port().isEmpty());
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
