package boreledger.station.bench.look;

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

  /** Dark, in the job's unit, in a window. */
  public Appearance() {}

  /** The colours; never null. */
  public ObjectProperty<Light> light() {
    return light;
  }

  /** The unit that lengths are shown in; null for the one that the job names. */
  public ObjectProperty<DisplayUnit> unit() {
    return unit;
  }

  /** Whether the window fills the screen. */
  public BooleanProperty full() {
    return full;
  }
}
