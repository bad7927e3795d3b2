package boreledger.station.keeping;

import boreledger.station.app.BenchFolder;
import boreledger.station.app.Replay;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.SmallJob;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A ledger of many sessions: one of sixteen cylinders, ten depths and two axes is gauged by a
 * replay, and copied as often as it takes. All hashes and references are right.
 */
final class LongLedger {
  /** 320 positions and both checks on the setting ring. */
  static final int READINGS_A_SESSION = 322;

  private final Path file;

  private LongLedger(Path file) {
    this.file = file;
  }

  /**
   * Fills a ledger that is not there yet.
   *
   * @param sessions how many, one at least
   */
  static void fill(Path file, Path scratch, int sessions) throws Exception {
    new LongLedger(file).gauge(scratch).copy(sessions - 1);
  }

  private LongLedger gauge(Path scratch) throws Exception {
    SmallJob job =
        SmallJob.standard()
            .with("cylinders = 1", "cylinders = 16")
            .with(
                "[plan]\ndepths_mm = [12.0, 60.0]",
                "[plan]\ndepths_mm = [10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0]");
    List<String> lines = new ArrayList<>(List.of("+0.000"));
    for (int place = 0; place < READINGS_A_SESSION - 2; place++) {
      lines.add(String.format(Locale.ROOT, "+0.%03d", 10 + place * 7 % 23));
    }
    lines.add("+0.000");
    BenchFolder bench = new BenchFolder(scratch);
    Replay.prepare(bench.job(job), List.of(bench.bores(lines)), null).into(file, event -> {});
    return this;
  }

  private void copy(int times) throws Exception {
    try (Ledger ledger = Ledger.open(file);
        LedgerView view = ledger.view()) {
      Entry opening = view.sessions().get(0);
      List<Entry> said = view.ofSession(opening.seq());
      long sessionLength = 1 + said.size();
      long first = ledger.headSeq() + 1;
      ledger.appendAll(
          adding -> {
            for (int i = 0; i < times; i++) {
              long shift = first + i * sessionLength - opening.seq();
              adding.add(opening.body());
              for (Entry each : said) {
                adding.add(shifted(each.body(), shift));
              }
            }
          });
    }
  }

  private static EntryBody shifted(EntryBody body, long shift) {
    if (body instanceof ReadingTaken reading) {
      return new ReadingTaken(
          reading.session() + shift,
          reading.position(),
          reading.tS(),
          reading.wall(),
          reading.valueMm(),
          reading.standardUncertaintyMm(),
          reading.rule(),
          reading.setting() == null ? null : Long.valueOf(reading.setting() + shift),
          reading.samples(),
          reading.cautions());
    }
    SessionEnded ended = (SessionEnded) body;
    return new SessionEnded(ended.session() + shift, ended.tS(), ended.wall());
  }
}
