package boreledger.drivers.gauge;

import boreledger.drivers.decoder.Decoded;
import boreledger.drivers.decoder.Decoder;
import boreledger.drivers.decoder.Decoders;
import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.framer.Framer;
import boreledger.drivers.framer.Framers;
import boreledger.drivers.gauge.GaugeEvent.Bad;
import boreledger.drivers.gauge.GaugeEvent.Live;
import boreledger.drivers.gauge.GaugeEvent.Picks;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.pick.PickRule;
import boreledger.drivers.pick.PickRules;
import boreledger.drivers.pick.PlausibleWindow;
import boreledger.drivers.profile.GaugeProfile;
import java.util.ArrayList;
import java.util.List;

/**
 * A gauge as its profile describes it: framer, decoder and pick rule in a row. It is fed what a
 * line says and knows no port.
 *
 * <p>Every byte fed is in exactly one sample's or rejection's raw bytes once the line has ended.
 * The same bytes at the same times give the same events, in the same order, whether the line speaks
 * of quiet moments in between or not; quiet only brings a reading out sooner. One thread uses it.
 */
public final class Gauge {
  private final Framer framer;
  private final Decoder decoder;
  private final PickRule rule;

  /**
   * A gauge at the start of a stream.
   *
   * @param window what the readings of a session could be; null when not known
   */
  public Gauge(GaugeProfile profile, PlausibleWindow window) {
    this.framer = Framers.of(profile.frame());
    this.decoder = Decoders.of(profile);
    this.rule = PickRules.of(profile, window);
  }

  /** Everything that this line event completes, in order. */
  public List<GaugeEvent> feed(LineEvent event) {
    List<GaugeEvent> events = new ArrayList<>();
    if (event.isLast()) {
      finish(event, events);
      return events;
    }
    accept(framer.feed(event), events);
    if (event instanceof LineEvent.Spoilt spoilt) {
      picks(rule.quiet(spoilt.tS()), events);
      accept(new Rejected(spoilt.tS(), spoilt.bytes(), spoilt.why()), events);
    } else if (event instanceof LineEvent.Quiet) {
      picks(rule.quiet(event.tS()), events);
    }
    return events;
  }

  /** The end comes as if the line had been said to be quiet just before it. */
  private void finish(LineEvent end, List<GaugeEvent> events) {
    accept(framer.feed(new LineEvent.Quiet(end.tS())), events);
    List<FrameEvent> rest = framer.feed(end);
    accept(rest.stream().filter(FrameEvent.Frame.class::isInstance).toList(), events);
    picks(rule.quiet(end.tS()), events);
    accept(rest.stream().filter(FrameEvent.Damage.class::isInstance).toList(), events);
    picks(rule.end(end.tS()), events);
  }

  private void accept(List<FrameEvent> framed, List<GaugeEvent> events) {
    for (FrameEvent each : framed) {
      // What the silence before this frame completes comes first, as if it had been told of.
      picks(rule.quiet(each.tS()), events);
      accept(decode(each), events);
    }
  }

  private Decoded decode(FrameEvent framed) {
    if (framed instanceof FrameEvent.Damage damage) {
      return new Rejected(damage.tS(), damage.raw(), damage.why());
    }
    return decoder.decode((FrameEvent.Frame) framed);
  }

  private void accept(Decoded decoded, List<GaugeEvent> events) {
    if (decoded instanceof Rejected rejected) {
      events.add(new Bad(rejected));
    } else if (decoded instanceof Sample sample) {
      events.add(new Live(sample));
      picks(rule.accept(sample), events);
    }
  }

  private static void picks(List<PickEvent> picks, List<GaugeEvent> events) {
    picks.forEach(pick -> events.add(new Picks(pick)));
  }
}
