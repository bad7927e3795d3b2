package boreledger.station.bench.gaps;

import boreledger.station.app.FilingBook;
import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.job.Ring;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Which ring in which cylinder the room shows, and what there is to show of it. */
public final class GapsModel {
  private final Findings findings;
  private final Surroundings around;
  private final IntegerProperty cylinder = new SimpleIntegerProperty(1);
  private final ObjectProperty<String> ring = new SimpleObjectProperty<>();
  private final ObservableList<String> rings = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<String> ringsToSee = FXCollections.unmodifiableObservableList(rings);
  private final ReadOnlyObjectWrapper<GapsPage> page = new ReadOnlyObjectWrapper<>();
  private final Feelers feelers;
  private final FilingBench filing;
  private final Supposing supposing;

  /**
   * The first ring in the first cylinder of what was found.
   *
   * @param books how passes with the file are noted in a ledger
   */
  public GapsModel(
      Findings findings, Surroundings around, Memory memory, Function<Path, FilingBook> books) {
    this.findings = findings;
    this.filing = new FilingBench(around, memory, books, findings::want);
    this.supposing = new Supposing(findings);
    this.around = around;
    this.feelers = new Feelers(memory);
    findings.latest().subscribe(found -> turn());
    cylinder.subscribe(number -> turn());
    ring.subscribe(name -> turn());
    around.appearance().unit().subscribe(unit -> turn());
  }

  /** The shown cylinder, from 1. */
  public IntegerProperty cylinder() {
    return cylinder;
  }

  /** The shown ring's name; null while the job has none. */
  public ObjectProperty<String> ring() {
    return ring;
  }

  /** The job's rings by name. */
  public ObservableList<String> rings() {
    return ringsToSee;
  }

  ReadOnlyObjectProperty<GapsPage> page() {
    return page.getReadOnlyProperty();
  }

  Findings findings() {
    return findings;
  }

  Feelers feelers() {
    return feelers;
  }

  FilingBench filing() {
    return filing;
  }

  Supposing supposing() {
    return supposing;
  }

  private void turn() {
    Finding found = findings.latest().get();
    if (found == null || found.job().rings().isEmpty()) {
      page.set(null);
      filing.show(null);
      return;
    }
    List<String> names = found.job().rings().stream().map(Ring::name).toList();
    if (!names.equals(rings)) {
      rings.setAll(names);
    }
    if (!names.contains(ring.get())) {
      // Setting it turns the page again.
      ring.set(names.get(0));
      return;
    }
    int last = found.job().engine().cylinders();
    int shown = Math.max(1, Math.min(last, cylinder.get()));
    GapsPage now = GapsPage.of(found, ring.get(), shown, around.appearance().unit().get());
    page.set(now);
    feelers.want(now.targetMm(), now.filing().lengths());
    filing.show(now.filing());
  }
}
