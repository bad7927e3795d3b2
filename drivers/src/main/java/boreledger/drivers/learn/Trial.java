package boreledger.drivers.learn;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Tries a learned profile on the real framer and decoder, over everything that was heard. */
final class Trial {
  private final List<LineEvent> heard;
  private final List<ShownValue> shown;

  Trial(List<LineEvent.Chunk> chunks, List<ShownValue> shown) {
    double endTS = chunks.isEmpty() ? 0 : chunks.get(chunks.size() - 1).tS();
    heard = new ArrayList<>(chunks);
    heard.add(new LineEvent.End(endTS));
    this.shown = shown;
  }

  /**
   * Whether the profile gives the shown values in their order and nothing else. Only what comes
   * before the first whole frame or after the last may be lost: a person may start or stop
   * listening in the middle of a frame.
   */
  boolean passes(String profileText, BigDecimal stepMm) {
    List<Double> valuesMm = new ArrayList<>();
    int lostAfterFirst = 0;
    int lostSinceLast = 0;
    for (GaugeEvent event : play(profileText)) {
      if (event instanceof GaugeEvent.Live live) {
        valuesMm.add(live.sample().valueMm());
        lostAfterFirst += lostSinceLast;
        lostSinceLast = 0;
      } else if (event instanceof GaugeEvent.Bad && !valuesMm.isEmpty()) {
        lostSinceLast++;
      }
    }
    return lostAfterFirst == 0 && lostSinceLast <= 1 && showsAll(valuesMm, stepMm);
  }

  private List<GaugeEvent> play(String profileText) {
    List<GaugeEvent> events = new ArrayList<>();
    try {
      GaugeProfile profile = GaugeProfiles.parse("learned" + GaugeProfiles.ENDING, profileText);
      Gauge gauge = new Gauge(profile, null);
      heard.forEach(event -> events.addAll(gauge.feed(event)));
    } catch (FileProblem e) {
      throw new IllegalStateException("a learned profile must be readable: " + e.getMessage(), e);
    }
    return events;
  }

  private boolean showsAll(List<Double> valuesMm, BigDecimal stepMm) {
    List<ShownValue> aligned = Runs.align(valuesMm, shown);
    for (int i = 0; i < aligned.size(); i++) {
      // A double is only near the decimal number that was sent.
      BigDecimal valueMm = BigDecimal.valueOf(valuesMm.get(i));
      BigDecimal offMm = valueMm.subtract(aligned.get(i).mm()).abs();
      BigDecimal allowedMm =
          aligned.get(i).roundingMm().max(stepMm.multiply(new BigDecimal("0.5")));
      if (offMm.compareTo(allowedMm.add(new BigDecimal("1e-6"))) > 0) {
        return false;
      }
    }
    return !aligned.isEmpty();
  }
}
