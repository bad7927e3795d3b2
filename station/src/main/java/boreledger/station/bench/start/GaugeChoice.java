package boreledger.station.bench.start;

import boreledger.drivers.serial.PortIdentity;
import boreledger.station.app.LiveChoice;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.StartText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Which gauge: the practice gauge, or one at a port with its profile. */
public final class GaugeChoice {
  private static final String PROFILES = "gauge";
  private static final String PORT = "port";

  private final StartServices services;
  private final Surroundings around;
  private final Memory memory;
  private final BooleanProperty practising = new SimpleBooleanProperty(true);
  private final ObservableList<PortIdentity> ports = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<PortIdentity> portsToSee =
      FXCollections.unmodifiableObservableList(ports);
  private final StringProperty port = new SimpleStringProperty("");
  private final ObservableList<ProfileChoice> profiles = FXCollections.observableArrayList();
  private final ObservableList<ProfileChoice> profilesToSee =
      FXCollections.unmodifiableObservableList(profiles);
  private final ObjectProperty<ProfileChoice> profile = new SimpleObjectProperty<>();

  GaugeChoice(StartServices services, Surroundings around, Memory memory) {
    this.services = services;
    this.around = around;
    this.memory = memory;
    profiles.setAll(ProfileChoice.builtIn());
    for (Path file : memory.recent(PROFILES)) {
      profiles.add(ProfileChoice.file(file));
    }
    profile.set(profiles.get(0));
    memory.get(PORT).ifPresent(port::set);
  }

  /** Looks which ports there are. */
  public void lookForPorts() {
    around
        .background()
        .execute(
            () -> {
              List<PortIdentity> found = services.ports();
              around.screen().execute(() -> ports.setAll(found));
            });
  }

  /** Takes a profile from a file of the person's own. */
  public void takeProfile(Path file) {
    ProfileChoice choice = ProfileChoice.file(file);
    if (!profiles.contains(choice)) {
      profiles.add(choice);
    }
    profile.set(choice);
  }

  /** Takes the profile that was learned at this port, now and at the next start. */
  void taught(Path file) {
    takeProfile(file);
    practising.set(false);
    memory.used(PROFILES, file);
    memory.put(PORT, port.get().strip());
  }

  /** Remembers what is listened to. */
  void remember(LiveChoice listening) {
    if (listening instanceof LiveChoice.Gauge gauge) {
      memory.put(PORT, gauge.port());
      if (gauge.gauge().getNameCount() > 1) {
        memory.used(PROFILES, gauge.gauge());
      }
    }
  }

  /** What is still to be chosen, in words; empty when nothing is. */
  Optional<String> missing() {
    return !practising.get() && port.get().isBlank()
        ? Optional.of(StartText.NEEDS_PORT.with())
        : Optional.empty();
  }

  /** The gauge at the port, which is waited for when it goes. */
  LiveChoice atPort() {
    return new LiveChoice.Gauge(profile.get().gauge(), port.get().strip(), true);
  }

  /** Whether to practise without a gauge. */
  public BooleanProperty practising() {
    return practising;
  }

  /** The ports there were when last looked. */
  public ObservableList<PortIdentity> ports() {
    return portsToSee;
  }

  /** The port's path, as chosen or typed. */
  public StringProperty port() {
    return port;
  }

  /** The gauge profiles to choose from. */
  public ObservableList<ProfileChoice> profiles() {
    return profilesToSee;
  }

  /** The gauge's profile. */
  public ObjectProperty<ProfileChoice> profile() {
    return profile;
  }
}
