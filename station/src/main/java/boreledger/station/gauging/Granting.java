package boreledger.station.gauging;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Outcome;
import boreledger.station.session.Session;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

/** Does what a person asked of a run, on the thread that writes the ledger. */
final class Granting {
  private final Session session;
  private final List<SideGauge> sides;
  private final DoubleSupplier clockS;
  private final Supplier<Outcome> asking;
  private final Consumer<GaugingEvent> watcher;
  private final HeldValues values = new HeldValues();

  /**
   * @param clockS the session's clock; null when bytes are recorded ones, which follow the plan
   * @param asking asks the main gauge for a reading
   * @param watcher told what comes of a wish about a further gauge
   */
  Granting(
      Session session,
      List<SideGauge> sides,
      DoubleSupplier clockS,
      Supplier<Outcome> asking,
      Consumer<GaugingEvent> watcher) {
    this.session = session;
    this.sides = sides;
    this.clockS = clockS;
    this.asking = asking;
    this.watcher = watcher;
  }

  /** Notes what the run tells. */
  void hear(GaugingEvent event) {
    values.hear(event);
  }

  /** What came of a wish about the main gauge; empty when it was about another and was told. */
  Optional<Outcome> grant(Wish wish) throws LedgerFault {
    if (wish instanceof Wish.Confirm confirm) {
      return answer(confirm.held(), true);
    } else if (wish instanceof Wish.Leave leave) {
      return answer(leave.held(), false);
    }
    return Optional.of(
        clockS == null
            ? new Outcome.NotDone("recorded bytes follow the plan")
            : granted(wish, clockS.getAsDouble()));
  }

  private Outcome granted(Wish wish, double tS) throws LedgerFault {
    String why = wish.by().words();
    if (wish instanceof Wish.TakeBack) {
      return session.takeBackOrRestore(tS, why);
    } else if (wish instanceof Wish.Skip) {
      return session.skip(tS, why);
    } else if (wish instanceof Wish.GoTo to) {
      return session.goTo(to.position(), tS, why);
    }
    return asking.get();
  }

  private Optional<Outcome> answer(Outcome.Held held, boolean take) throws LedgerFault {
    Optional<HeldValues.Waiting> meant = values.meant(held);
    if (meant.isEmpty()) {
      return Optional.of(new Outcome.NotDone("no held value waits for an answer"));
    }
    Outcome.Held value = meant.get().held();
    for (SideGauge side : sides) {
      if (side.name().equals(meant.get().gauge())) {
        side.answer(value, take, watcher);
        return Optional.empty();
      }
    }
    return Optional.of(take ? session.confirm(value) : new Outcome.Left(value));
  }
}
