package boreledger.station.bench.ledger;

import boreledger.station.app.EntryWriter;
import boreledger.station.bench.House;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.Executor;

/** The room in a house with a real ledger, with work that is done at once. */
final class LedgerHouse {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2031-05-07T10:00:00Z"), ZoneOffset.UTC);

  final House house;
  boolean gauging;
  EntryWriter writer = EntryWriter.BY_ITSELF;
  int changed;

  LedgerHouse(House house) {
    this.house = house;
  }

  /** Bores and top ring's gaps of the invented engine. */
  static LedgerHouse gauged(Path folder) throws Exception {
    return new LedgerHouse(House.gauged(folder, "bore-press", "gap-top"));
  }

  LedgerModel model() {
    return model(Runnable::run);
  }

  LedgerModel model(Executor working) {
    return new LedgerModel(around(working));
  }

  LedgerAround around(Executor working) {
    return new LedgerAround(
        house.around(),
        Runnable::run,
        working,
        () -> changed++,
        () -> gauging,
        (ledger, bodies) -> writer.write(ledger, bodies),
        CLOCK);
  }
}
