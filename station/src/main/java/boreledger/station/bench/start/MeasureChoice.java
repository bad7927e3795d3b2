package boreledger.station.bench.start;

import boreledger.drivers.capture.Measure;
import boreledger.station.bench.words.StartText;
import boreledger.station.job.Ring;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What is gauged of a job, and at which temperatures. */
public final class MeasureChoice {
  private final ObjectProperty<Measure> measure = new SimpleObjectProperty<>(Measure.BORE);
  private final ObservableList<String> rings = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<String> ringsToSee = FXCollections.unmodifiableObservableList(rings);
  private final StringProperty ring = new SimpleStringProperty();
  private final StringProperty settingTemp = new SimpleStringProperty("");
  private final StringProperty blockTemp = new SimpleStringProperty("");

  /**
   * Bores, without temperatures.
   *
   * @param job the job that is open; null while none is
   */
  MeasureChoice(ObservableValue<JobCard> job) {
    job.subscribe(this::opened);
  }

  /** What is gauged. */
  public ObjectProperty<Measure> measure() {
    return measure;
  }

  /** The job's rings by name. */
  public ObservableList<String> rings() {
    return ringsToSee;
  }

  /** Which ring, when no bores are gauged; null while the job has none. */
  public StringProperty ring() {
    return ring;
  }

  /** The setting ring's temperature, as typed. */
  public StringProperty settingTemp() {
    return settingTemp;
  }

  /** The block's temperature, as typed. */
  public StringProperty blockTemp() {
    return blockTemp;
  }

  /** The ring that is gauged; null for bores. */
  String ringGauged() {
    return measure.get() == Measure.BORE ? null : ring.get();
  }

  /** Why a ring cannot be gauged, in words; empty when it can, and for bores. */
  Optional<String> missingRing() {
    return measure.get() != Measure.BORE && ring.get() == null
        ? Optional.of(StartText.NEEDS_RING.with())
        : Optional.empty();
  }

  /** What is wrong with a temperature, in words; empty when nothing is. */
  Optional<String> impossibleTemperature() {
    return new Temperature(settingTemp.get())
        .problem()
        .or(() -> new Temperature(blockTemp.get()).problem());
  }

  private void opened(JobCard card) {
    if (card != null) {
      rings.setAll(card.job().rings().stream().map(Ring::name).toList());
      ring.set(rings.isEmpty() ? null : rings.get(0));
    }
  }
}
