package boreledger.station.bench.start;

import boreledger.drivers.capture.Measure;
import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Presence;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.StartText;
import boreledger.station.bench.words.Text;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;

/** What is gauged, and at which temperatures. */
final class MeasurePane extends Card {
  MeasurePane(MeasureChoice choice) {
    super(StartText.WHAT.with());
    Map<Measure, String> words = new LinkedHashMap<>();
    words.put(Measure.BORE, StartText.BORES.with());
    words.put(Measure.GAP, StartText.GAPS.with());
    words.put(Measure.RING_DEPTH, StartText.RING_DEPTHS.with());
    ComboBox<String> ring = new ComboBox<>(choice.rings());
    ring.setId("ring");
    ring.valueProperty().bindBidirectional(choice.ring());
    ObservableValue<Boolean> ofRings = choice.measure().map(each -> each != Measure.BORE);
    getChildren()
        .addAll(
            new Choice<>(words, choice.measure()),
            Presence.when(ofRings, new Field(StartText.RING.with(), ring)),
            temperature("setting-temp", StartText.SETTING_TEMP, choice.settingTemp()),
            temperature("block-temp", StartText.BLOCK_TEMP, choice.blockTemp()),
            hint());
  }

  private static Node temperature(String id, Text name, StringProperty value) {
    TextField field = new TextField();
    field.setId(id);
    field.setPromptText(StartText.TEMP_PROMPT.with());
    field.textProperty().bindBidirectional(value);
    Field named = new Field(name.with(), field);
    Label problem = Words.label(id + "-problem", Styles.PROBLEM);
    value.subscribe(typed -> problem.setText(new Temperature(typed).problem().orElse("")));
    ObservableValue<Boolean> isWrong = problem.textProperty().map(words -> !words.isEmpty());
    named.getChildren().add(Presence.when(isWrong, problem));
    return named;
  }

  private static Label hint() {
    Label hint = Words.label(null, Styles.MUTED);
    hint.setText(StartText.TEMP_HINT.with());
    return hint;
  }
}
