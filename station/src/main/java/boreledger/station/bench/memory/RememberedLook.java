package boreledger.station.bench.memory;

import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.words.Language;
import boreledger.station.job.DisplayUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.stage.Stage;

/** The window's look and place, as they were last time. */
public final class RememberedLook {
  private static final String LIGHT = "light";
  private static final String UNIT = "unit";
  private static final String LANGUAGE = "language";
  private static final String FULL = "full";
  private static final String X = "x";
  private static final String Y = "y";
  private static final String WIDTH = "width";
  private static final String HEIGHT = "height";

  private final Memory memory;

  /** The look in a memory. */
  public RememberedLook(Memory memory) {
    this.memory = memory;
  }

  /**
   * Gives the appearance what is remembered, and remembers a language as soon as one is chosen.
   *
   * @param system where the person lives: its language is wanted until one is chosen
   */
  public void restore(Appearance appearance, Locale system) {
    find(LIGHT, Light.values()).ifPresent(appearance.light()::set);
    find(UNIT, DisplayUnit.values()).ifPresent(appearance.unit()::set);
    Language language = find(LANGUAGE, Language.values()).orElseGet(() -> Language.of(system));
    appearance.language().set(language);
    appearance
        .language()
        .addListener((wanted, before, chosen) -> memory.put(LANGUAGE, chosen.name()));
    memory.get(FULL).map(Boolean::valueOf).ifPresent(appearance.full()::set);
  }

  /** Gives a switch what is remembered under a key, and remembers it whenever it is changed. */
  public void rememberUnder(String key, BooleanProperty value) {
    memory.get(key).map(Boolean::valueOf).ifPresent(value::set);
    value.subscribe((before, now) -> memory.put(key, Boolean.toString(now)));
  }

  /**
   * Puts the window where it was.
   *
   * @param onScreen whether a rectangle of x, y, width and height can be seen on some screen
   */
  public void restore(Stage stage, Function<double[], Boolean> onScreen) {
    Optional<double[]> place = place();
    if (place.isPresent() && onScreen.apply(place.get())) {
      double[] at = place.get();
      stage.setX(at[0]);
      stage.setY(at[1]);
      stage.setWidth(at[2]);
      stage.setHeight(at[3]);
    }
  }

  /** Remembers how it is now. */
  public void keep(Appearance appearance, Stage stage) {
    memory.put(LIGHT, appearance.light().get().name());
    DisplayUnit unit = appearance.unit().get();
    memory.put(UNIT, unit == null ? null : unit.name());
    memory.put(FULL, Boolean.toString(appearance.full().get()));
    if (!stage.isFullScreen() && !stage.isMaximized() && !stage.isIconified()) {
      keep(X, stage.getX());
      keep(Y, stage.getY());
      keep(WIDTH, stage.getWidth());
      keep(HEIGHT, stage.getHeight());
    }
  }

  private void keep(String key, double px) {
    memory.put(key, Double.isFinite(px) ? Long.toString(Math.round(px)) : null);
  }

  private Optional<double[]> place() {
    double[] place = new double[4];
    String[] keys = {X, Y, WIDTH, HEIGHT};
    for (int i = 0; i < keys.length; i++) {
      Optional<Double> value = memory.get(keys[i]).flatMap(RememberedLook::number);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      place[i] = value.get();
    }
    return Optional.of(place);
  }

  private static Optional<Double> number(String text) {
    try {
      return Optional.of((double) Long.parseLong(text));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private <T extends Enum<T>> Optional<T> find(String key, T[] values) {
    return memory
        .get(key)
        .flatMap(name -> Stream.of(values).filter(value -> value.name().equals(name)).findFirst());
  }
}
