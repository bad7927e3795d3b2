package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.job.draft.Place;
import boreledger.station.job.draft.Section;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The sections at a glance: which one has something to mend, which one still needs something. */
final class Outline extends VBox {
  private final FormModel model;
  private final Map<Section, Button> buttons = new EnumMap<>(Section.class);
  private final Map<Section, Sign> signs = new EnumMap<>(Section.class);

  Outline(FormModel model, Consumer<Section> go) {
    this.model = model;
    setId("outline");
    getStyleClass().add(Styles.FORM_OUTLINE);
    setMinWidth(Region.USE_PREF_SIZE);
    for (Section section : Groups.ORDER) {
      Sign sign = new Sign(Sign.Kind.NONE);
      Button button = new Button(SectionWords.of(section).title().with(), sign);
      button.setId("go-" + (section.key().isEmpty() ? "job" : section.key()));
      button.getStyleClass().setAll(Styles.FORM_OUTLINE_SECTION);
      button.setMaxWidth(Double.MAX_VALUE);
      button.setMinWidth(Region.USE_PREF_SIZE);
      button.setOnAction(pressed -> go.accept(section));
      buttons.put(section, button);
      signs.put(section, sign);
      getChildren().add(button);
    }
    refresh();
  }

  void refresh() {
    for (Section section : Groups.ORDER) {
      String title = SectionWords.of(section).title().with();
      if (isIn(section, model.open())) {
        tell(section, Sign.Kind.OPEN, JobFormText.OUTLINE_OPEN.with(title));
      } else {
        boolean isFilled = hasSomething(section);
        tell(section, isFilled ? Sign.Kind.TAKEN : Sign.Kind.NONE, title);
      }
      if (isIn(section, model.problems())) {
        tell(section, Sign.Kind.REFUSED, JobFormText.OUTLINE_PROBLEM.with(title));
      }
    }
  }

  private boolean hasSomething(Section section) {
    return model.draft().places().stream()
        .anyMatch(
            place -> place.field().section() == section && !model.draft().text(place).isBlank());
  }

  private void tell(Section section, Sign.Kind kind, String spoken) {
    signs.get(section).show(kind);
    buttons.get(section).setAccessibleText(spoken);
  }

  private static boolean isIn(Section section, List<Place> places) {
    return places.stream().anyMatch(place -> place.field().section() == section);
  }
}
