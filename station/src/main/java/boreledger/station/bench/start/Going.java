package boreledger.station.bench.start;

import boreledger.station.bench.look.Surroundings;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** Whether something is being gauged, as this room last saw it, and the way to stop it. */
public final class Going {
  private final StartServices services;
  private final ReadOnlyBooleanWrapper going = new ReadOnlyBooleanWrapper(false);

  Going(StartServices services, Surroundings around) {
    this.services = services;
    // Every reading and every end brings results anew.
    around.results().subscribe(results -> look());
  }

  /** Sees how it stands. */
  public void look() {
    going.set(services.isGauging());
  }

  /** Stops what is being gauged; the session can be gone on with. */
  public void stop() {
    services.stopGauging();
    going.set(false);
  }

  /** Whether something is being gauged. */
  public ReadOnlyBooleanProperty going() {
    return going.getReadOnlyProperty();
  }
}
