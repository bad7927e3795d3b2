package boreledger.station.gauging;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Outcome;
import boreledger.station.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a live gauge's stream shows that no single value does: a unit that changes in the middle, or
 * bytes that nothing can be made of.
 *
 * <p>A change of unit is told when it is heard, and the next reading carries it as a caution.
 * Frames without a value are told of once when {@value #MANY_BAD} have come in a row, and again
 * only after a value. An answer that did not come is no frame, and a gauge that says it is out of
 * range or on hold is understood.
 */
final class LineWatch {
  private static final int MANY_BAD = 8;

  private LengthUnit heard;
  private LengthUnit taken;
  private int bad;

  /** What is to be told of this event, in one line; empty for most. */
  Optional<String> hear(GaugeEvent event) {
    if (event instanceof GaugeEvent.Live live) {
      return heard(List.of(live.sample()));
    }
    if (event instanceof GaugeEvent.Picks picks) {
      return heard(picks.pick().samples());
    }
    if (!isUnintelligible(((GaugeEvent.Bad) event).rejected())) {
      return Optional.empty();
    }
    bad++;
    return bad == MANY_BAD
        ? Optional.of(
            MANY_BAD
                + " frames in a row could not be read: the baud rate, the parity or the gauge"
                + " profile may be wrong")
        : Optional.empty();
  }

  /** A pick, with a caution when its unit is another than that of the last reading taken. */
  private PickEvent cautioned(PickEvent pick) {
    if (!(pick instanceof PickEvent.Picked picked)) {
      return pick;
    }
    List<LengthUnit> units = units(picked.samples());
    LengthUnit before = taken == null ? units.get(0) : taken;
    Optional<LengthUnit> other = units.stream().filter(unit -> unit != before).findFirst();
    if (other.isEmpty()) {
      return picked;
    }
    List<String> cautions = new ArrayList<>(picked.cautions());
    cautions.add(changed(before, other.get()));
    return new PickEvent.Picked(
        picked.tS(), picked.valueMm(), picked.standardUncertaintyMm(), picked.samples(), cautions);
  }

  /** Offers a pick to a session, with such a caution. */
  Outcome offer(Session session, PickEvent pick) throws LedgerFault {
    Outcome outcome = session.offerLive(cautioned(pick));
    if (outcome instanceof Outcome.Taken) {
      List<LengthUnit> units = units(pick.samples());
      taken = units.get(units.size() - 1);
    }
    return outcome;
  }

  private Optional<String> heard(List<Sample> samples) {
    bad = 0;
    Optional<String> change = Optional.empty();
    for (LengthUnit unit : units(samples)) {
      if (heard != null && unit != heard) {
        change = Optional.of(changed(heard, unit));
      }
      heard = unit;
    }
    return change;
  }

  private static List<LengthUnit> units(List<Sample> samples) {
    return samples.stream().map(Sample::unit).toList();
  }

  private static String changed(LengthUnit from, LengthUnit to) {
    return String.format(
        Locale.ROOT,
        "the gauge went from %s to %s in the middle of the session; check that its setting still"
            + " holds",
        from.symbol(),
        to.symbol());
  }

  private static boolean isUnintelligible(Rejected rejected) {
    // What a flag says comes as the reason of a rejection; the frame was read all right.
    boolean flagged = Stream.of(Flag.values()).anyMatch(f -> rejected.why().contains(f.meaning()));
    return rejected.raw().size() > 0 && !flagged;
  }
}
