package boreledger.station.gauging;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.Outcome;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import boreledger.station.session.WallClock;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A bore session of four positions in a ledger of its own, a scripted line, and everything that the
 * run told: opening check, thrust axis, pin axis, closing check.
 */
final class RunOnAScript implements AutoCloseable {
  static final WallClock WALL = WallClock.from(Instant.parse("2031-05-06T08:00:00Z"));

  /** What the session's clock shows whenever a person asks for something. */
  static final double NOW_S = 90;

  final ScriptedLine line = new ScriptedLine();
  final List<GaugingEvent> told = new ArrayList<>();
  final Path file;
  final Ledger ledger;
  final Session session;

  RunOnAScript(Path folder) throws LedgerFault {
    this(folder, SmallGauge.deviation());
  }

  RunOnAScript(Path folder, SmallGauge gauge) throws LedgerFault {
    file = folder.resolve("bench.db");
    ledger = Ledger.openOrCreate(file);
    session = Session.open(ledger, start(gauge), WALL);
  }

  static SessionStart start() {
    return start(SmallGauge.deviation());
  }

  static SessionStart start(SmallGauge gauge) {
    return new SessionStart(
        SmallJob.atOneDepth().job(),
        SmallJob.tables(),
        gauge.profile(),
        Measure.BORE,
        null,
        20.0,
        20.0,
        "a script");
  }

  GaugingRun live() {
    return live(event -> {});
  }

  GaugingRun live(Consumer<GaugingEvent> alsoTold) {
    return GaugingRun.live(session, line, false, () -> NOW_S, List.of(), watcher(alsoTold));
  }

  GaugingRun recorded() {
    return GaugingRun.recorded(session, line, watcher(event -> {}));
  }

  /** What became of everything so far, in order. */
  List<Outcome> outcomes() {
    return told.stream()
        .flatMap(event -> event instanceof GaugingEvent.Said said ? Stream.of(said) : Stream.of())
        .map(GaugingEvent.Said::outcome)
        .toList();
  }

  StoredSession stored() throws LedgerFault {
    try (LedgerView view = LedgerView.open(file)) {
      return StoredSession.all(view).get(0);
    }
  }

  private Consumer<GaugingEvent> watcher(Consumer<GaugingEvent> alsoTold) {
    return event -> {
      told.add(event);
      alsoTold.accept(event);
    };
  }

  @Override
  public void close() throws LedgerFault {
    ledger.close();
  }
}
