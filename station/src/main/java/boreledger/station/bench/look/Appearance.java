package boreledger.station.bench.look;

import boreledger.station.bench.words.Language;
import boreledger.station.job.DisplayUnit;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** How a person wants the window: the same in all rooms, and on the next start. */
public final class Appearance {
  private final ObjectProperty<Light> light = new SimpleObjectProperty<>(Light.DARK);
  private final ObjectProperty<DisplayUnit> unit = new SimpleObjectProperty<>();
  private final BooleanProperty full = new SimpleBooleanProperty(false);
  private final ObjectProperty<Language> language = new SimpleObjectProperty<>(Language.spoken());

  /** Dark, in the job's unit, in a window, in the language spoken. */
  public Appearance() {}

  /** The colours; never null. */
  public ObjectProperty<Light> light() {
    return light;
  }

  /** The unit that lengths are shown in; null for the one that the job names. */
  public ObjectProperty<DisplayUnit> unit() {
    return unit;
  }

  /** The language that is wanted; never null. Words are made in it from the next start. */
  public ObjectProperty<Language> language() {
    return language;
  }

  /** Whether the window fills the screen. */
  public BooleanProperty full() {
    return full;
  }
}
