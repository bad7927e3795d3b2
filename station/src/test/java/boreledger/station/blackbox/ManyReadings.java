package boreledger.station.blackbox;

import boreledger.station.app.BenchFolder;
import boreledger.station.app.Replay;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.SmallJob;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A ledger as a shop has after years: one whole session of some hundred readings, many times. */
final class ManyReadings {
  /** Sixteen cylinders, six depths, two axes, and the setting ring before and after. */
  static final int A_SESSION = 16 * 6 * 2 + 2;

  private final BenchFolder bench;

  ManyReadings(Path folder) {
    bench = new BenchFolder(folder);
  }

  Path ledger() {
    return bench.ledger();
  }

  /**
   * Gauges the session once, then writes it again and again; answers how many readings there are.
   */
  long write(long atLeast) throws LedgerFault {
    gaugeOnce();
    Entry opening;
    List<Entry> entries;
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      opening = view.sessions().get(0);
      entries = view.ofSession(opening.seq());
    }
    long readings = A_SESSION;
    try (Ledger ledger = Ledger.open(bench.ledger())) {
      for (; readings < atLeast; readings += A_SESSION) {
        long further = ledger.headSeq() + 1 - opening.seq();
        List<EntryBody> bodies = new ArrayList<>(List.of(opening.body()));
        entries.forEach(entry -> bodies.add(moved(entry.body(), further)));
        ledger.append(bodies);
      }
    }
    return readings;
  }

  private void gaugeOnce() {
    SmallJob job =
        SmallJob.standard()
            .with("cylinders = 1", "cylinders = 16")
            .with("depths_mm = [12.0, 60.0]", "depths_mm = [12.0, 30.0, 50.0, 70.0, 90.0, 108.0]");
    List<String> lines = new ArrayList<>(List.of("+0.000"));
    for (int i = 0; i < A_SESSION - 2; i++) {
      lines.add("+0.0%02d".formatted(i % 40));
    }
    lines.add("+0.000");
    try {
      Replay.prepare(bench.job(job), List.of(bench.bores(lines)), null)
          .into(bench.ledger(), event -> {});
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  /** What a later session says, as many entries further on. */
  private static EntryBody moved(EntryBody body, long further) {
    if (body instanceof ReadingTaken reading) {
      return new ReadingTaken(
          reading.session() + further,
          reading.position(),
          reading.tS(),
          reading.wall(),
          reading.valueMm(),
          reading.standardUncertaintyMm(),
          reading.rule(),
          reading.setting() == null ? null : reading.setting() + further,
          reading.samples(),
          reading.cautions());
    } else if (body instanceof SessionEnded ended) {
      return new SessionEnded(ended.session() + further, ended.tS(), ended.wall());
    }
    throw new AssertionError("a session without a slip says no " + body);
  }
}
