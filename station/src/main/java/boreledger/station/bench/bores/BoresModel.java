package boreledger.station.bench.bores;

import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.look.Surroundings;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleIntegerProperty;

/** Which cylinder the room shows, and what there is to show of it. */
public final class BoresModel {
  private final Findings findings;
  private final Surroundings around;
  private final IntegerProperty cylinder = new SimpleIntegerProperty(1);
  private final ReadOnlyObjectWrapper<BoresPage> page = new ReadOnlyObjectWrapper<>();

  /** The first cylinder of what was found. */
  public BoresModel(Findings findings, Surroundings around) {
    this.findings = findings;
    this.around = around;
    findings.latest().subscribe(found -> turn());
    cylinder.subscribe(number -> turn());
    around.appearance().unit().subscribe(unit -> turn());
  }

  /** The shown cylinder, from 1. */
  public IntegerProperty cylinder() {
    return cylinder;
  }

  /** What is shown; null as long as nothing was gauged. */
  ReadOnlyObjectProperty<BoresPage> page() {
    return page.getReadOnlyProperty();
  }

  Findings findings() {
    return findings;
  }

  private void turn() {
    Finding found = findings.latest().get();
    if (found == null) {
      page.set(null);
      return;
    }
    int last = found.job().engine().cylinders();
    int shown = Math.max(1, Math.min(last, cylinder.get()));
    page.set(BoresPage.of(found, shown, around.appearance().unit().get()));
  }
}
