package boreledger.station.gauging;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Line;
import boreledger.drivers.pick.PlausibleWindow;
import boreledger.drivers.queue.CaptureQueue;
import boreledger.drivers.queue.GaugeReader;
import boreledger.drivers.queue.QueueItem;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Outcome;
import boreledger.station.session.Plausible;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A further gauge of a run, bound to a measure and a ring of its own. Its line has its own thread
 * and puts into the run's queue; what it says goes into its own session, which is opened when there
 * is something to keep.
 *
 * <p>But for its line's thread, the thread that writes the ledger uses it.
 */
public final class SideGauge {
  private final SessionStart start;
  private final Line line;
  private final Opener opener;
  private final LineWatch watch = new LineWatch();
  private Session session;
  private boolean over;

  /** Opens or resumes the gauge's session. */
  @FunctionalInterface
  public interface Opener {
    /** Puts the session's opening into the ledger. */
    Session open() throws LedgerFault;
  }

  /** A gauge of which nothing was heard yet; its line is up. */
  public SideGauge(SessionStart start, Line line, Opener opener) {
    this.start = start;
    this.line = line;
    this.opener = opener;
  }

  /** What it is called in the queue and to the watcher, such as {@code ring-depth top}. */
  public String name() {
    return start.measure().word() + " " + (start.ring() == null ? "beside" : start.ring().name());
  }

  /** Its session; empty while there was nothing to keep. */
  public Optional<Session> session() {
    return Optional.ofNullable(session);
  }

  /** Begins to read its line into the queue. */
  void start(CaptureQueue queue) {
    Plausible plausible = start.plausible();
    PlausibleWindow window = new PlausibleWindow(plausible.lowMm(), plausible.highMm());
    Gauge gauge = new Gauge(start.gauge(), window);
    new GaugeReader(name(), line, gauge, queue, start.gauge().ask()).start();
  }

  /** Whether its session was opened in this run and can still get the readings it waits for. */
  boolean isUnfinished() {
    return !over && session != null && session.next().isPresent();
  }

  /** Takes what its line brought; a break of the line ends this gauge and not the run. */
  void handle(QueueItem item, Consumer<GaugingEvent> watcher) throws LedgerFault {
    Consumer<GaugingEvent> told = event -> watcher.accept(new GaugingEvent.Beside(name(), event));
    if (item instanceof QueueItem.Said said) {
      hear(said.event(), told);
    } else if (item instanceof QueueItem.Gone gone) {
      lineBroke(gone.tS(), gone.why());
      told.accept(new GaugingEvent.LineGone(gone.why(), progress()));
    } else if (item instanceof QueueItem.Back back) {
      lineBroke(back.tS(), back.how());
      told.accept(new GaugingEvent.LineBack(back.how(), progress()));
    } else if (item instanceof QueueItem.Ended) {
      over = true;
    } else if (item instanceof QueueItem.Broke broke) {
      over = true;
      lineBroke(broke.tS(), broke.fault().getMessage());
      told.accept(new GaugingEvent.LineGone(broke.fault().getMessage(), progress()));
    }
  }

  /** Takes a value that was held after all, or leaves it. */
  void answer(Outcome.Held held, boolean take, Consumer<GaugingEvent> watcher) throws LedgerFault {
    Outcome outcome = take ? session.confirm(held) : new Outcome.Left(held);
    GaugingEvent event = new GaugingEvent.Said(outcome, progress());
    watcher.accept(new GaugingEvent.Beside(name(), event));
  }

  private void hear(GaugeEvent event, Consumer<GaugingEvent> told) throws LedgerFault {
    watch.hear(event).ifPresent(what -> told.accept(new GaugingEvent.Noticed(what)));
    if (event instanceof GaugeEvent.Live live) {
      told.accept(new GaugingEvent.Live(live.sample()));
      return;
    }
    open(told);
    if (event instanceof GaugeEvent.Picks picks) {
      told.accept(new GaugingEvent.Said(watch.offer(session, picks.pick()), progress()));
    } else if (event instanceof GaugeEvent.Bad bad) {
      told.accept(new GaugingEvent.Said(session.refuse(bad.rejected()), progress()));
    }
  }

  private void open(Consumer<GaugingEvent> told) throws LedgerFault {
    if (session == null) {
      session = opener.open();
      told.accept(
          new GaugingEvent.Began(
              start, session.id(), session.done() > 0, line.notes(), progress()));
    }
  }

  private void lineBroke(double tS, String why) throws LedgerFault {
    if (session != null) {
      session.lineBroke(tS, why);
    }
  }

  private Progress progress() {
    return session == null
        ? new Progress(null, 0, 0)
        : new Progress(session.next().orElse(null), session.done(), session.planned());
  }

  void close() {
    line.close();
  }
}
