package boreledger.station.bench;

import boreledger.station.app.EntryWriter;
import boreledger.station.app.FilingBook;
import boreledger.station.app.Replay;
import boreledger.station.app.Workshop;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/**
 * The surroundings of a room in a test: a real ledger with the sample captures in it, work that is
 * done at once on the calling thread, and a note of where the room wanted to go.
 */
public final class House {
  /** Where the samples stand. */
  public static final Path SAMPLES = Path.of("..", "sample-captures");

  private final ObjectProperty<Workshop> workshop = new SimpleObjectProperty<>();
  private final ObjectProperty<JobResults> results = new SimpleObjectProperty<>();
  private final Appearance appearance = new Appearance();
  private final List<String> gone = new ArrayList<>();
  private final Surroundings around;

  private House(Path ledger) {
    workshop.set(new Workshop(ledger));
    around =
        new Surroundings(workshop, results, appearance, Runnable::run, Runnable::run, gone::add);
  }

  /** A ledger that does not exist yet. */
  public static House empty(Path folder) {
    return new House(folder.resolve("house.db"));
  }

  /** The invented engine, gauged from the sample captures of these names. */
  public static House gauged(Path folder, String... captures) throws Exception {
    House house = empty(folder);
    List<Path> files =
        List.of(captures).stream().map(name -> SAMPLES.resolve(name + ".capture.jsonl")).toList();
    Path job = SAMPLES.resolve("pumphouse-three.job.toml");
    Replay.prepare(job, files, null).into(house.ledger(), event -> {});
    house.refresh();
    return house;
  }

  /** How passes with the file are noted: at one and the same moment. */
  public FilingBook filing(Path ledger) {
    Clock clock = Clock.fixed(Instant.parse("2031-05-07T10:00:00Z"), ZoneOffset.UTC);
    return new FilingBook(ledger, EntryWriter.BY_ITSELF, clock);
  }

  /** Computes the results anew. */
  public void refresh() throws Exception {
    results.set(workshop.get().latestResults().orElse(null));
  }

  /** The ledger's file. */
  public Path ledger() {
    return workshop.get().ledger();
  }

  /** What a room is given. */
  public Surroundings around() {
    return around;
  }

  /** How the person wants the window. */
  public Appearance appearance() {
    return appearance;
  }

  /** The rooms that were asked for. */
  public List<String> gone() {
    return gone;
  }
}
