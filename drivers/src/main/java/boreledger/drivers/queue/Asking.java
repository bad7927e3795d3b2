package boreledger.drivers.queue;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.AskSpec;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * When a gauge is to be asked, on its line's clock.
 *
 * <ul>
 *   <li>No request goes out while an answer is waited for, or sooner after the line's last byte
 *       than the profile's pause.
 *   <li>A sample is the answer. Rejected frames are not: the request's own echo may be among them.
 *       So after those the next request waits until the time for an answer is over.
 *   <li>When that time is over and nothing at all was made of the line, that is told: once, until
 *       something is; after a trigger every time.
 *   <li>Requests that were missed are not made up for.
 *   <li>A gauge whose line has gone is not asked before it is back.
 * </ul>
 *
 * <p>The line's thread uses it; {@link #trigger} may be called from any thread.
 */
final class Asking {
  private static final double TRIGGER_NOTICED_S = 0.02;
  // So that sums of decimal times compare as decimals: 0.1 + 0.1 + 0.1 is above 0.3.
  private static final double ROUNDING_S = 1e-6;

  private final AskSpec spec;
  private final double everyS;
  private final AtomicBoolean triggered = new AtomicBoolean();
  private double dueS;
  private double sentS;
  private double heardS = Double.NEGATIVE_INFINITY;
  private boolean away;
  private boolean awaiting;
  private boolean made;
  private boolean told;

  Asking(AskSpec spec) {
    this.spec = spec;
    everyS = spec.everyMs() == null ? Double.POSITIVE_INFINITY : spec.everyMs() / 1000;
    dueS = spec.everyMs() == null ? Double.POSITIVE_INFINITY : 0;
  }

  /** Asks for one value as soon as the line is free. */
  void trigger() {
    triggered.set(true);
  }

  /** Notes what the line said, and what the gauge made of it. */
  void heard(LineEvent event, List<GaugeEvent> events) {
    if (event instanceof LineEvent.Chunk) {
      heardS = event.tS();
    } else if (event instanceof LineEvent.Gone) {
      away = true;
      awaiting = false;
    } else if (event instanceof LineEvent.Back) {
      away = false;
    }
    boolean answered = events.stream().anyMatch(GaugeEvent.Live.class::isInstance);
    awaiting = awaiting && !answered;
    if (answered || events.stream().anyMatch(GaugeEvent.Bad.class::isInstance)) {
      made = true;
      told = false;
    }
  }

  /** Gives up an answer that is overdue; what is to be told of it. */
  Optional<Rejected> overdue(double nowS) {
    boolean inTime = isBefore(nowS, sentS + spec.answerWithinMs() / 1000);
    if (!awaiting || inTime || !isLineFree(nowS)) {
      return Optional.empty();
    }
    awaiting = false;
    if (made || told) {
      return Optional.empty();
    }
    told = spec.everyMs() != null;
    String what = heardS > sentS ? "no whole answer" : "no answer";
    String why = what + " to " + spec.request() + " within " + spec.answerWithinMs() + " ms";
    return Optional.of(new Rejected(nowS, Bytes.EMPTY, why));
  }

  /** The request to be sent now, if one is; it counts as sent then. */
  Optional<Bytes> due(double nowS) {
    boolean isEarly = isBefore(nowS, dueS);
    if (away || awaiting || !isLineFree(nowS) || isEarly && !triggered.get()) {
      return Optional.empty();
    }
    triggered.set(false);
    if (!isEarly) {
      dueS = isBefore(nowS, dueS + everyS) ? dueS + everyS : nowS + everyS;
    }
    sentS = nowS;
    awaiting = true;
    made = false;
    return Optional.of(spec.request());
  }

  /** How long the line may be listened to before this wants another look. */
  Duration patience(double nowS, Duration most) {
    double untilS = Math.min(dueS - nowS, TRIGGER_NOTICED_S);
    if (awaiting) {
      untilS = sentS + spec.answerWithinMs() / 1000 - nowS;
    }
    double longerS = Math.max(untilS, heardS + spec.pauseMs() / 1000 - nowS);
    double ms = Math.ceil(1000 * (longerS - ROUNDING_S));
    return Duration.ofMillis((long) Math.max(1, Math.min(ms, most.toMillis())));
  }

  private boolean isLineFree(double nowS) {
    return !isBefore(nowS, heardS + spec.pauseMs() / 1000);
  }

  private static boolean isBefore(double nowS, double thenS) {
    return nowS < thenS - ROUNDING_S;
  }
}
