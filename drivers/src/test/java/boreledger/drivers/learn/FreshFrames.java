package boreledger.drivers.learn;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** What a learned profile makes of values that its gauge never showed before. */
final class FreshFrames {
  static final int COUNT = 200;
  private static final double SAME_MM = 1e-5;

  private FreshFrames() {}

  /** What went wrong, in words; empty when every fresh value was decoded, and rightly. */
  static String wrong(InventedGauge gauge, String profile, long seed) throws FileProblem {
    Random random = new Random(seed);
    Recording recording = new Recording(gauge, seed);
    List<Double> sentMm = new ArrayList<>();
    double leastMm = gauge.leastMm().doubleValue();
    double rangeMm = gauge.mostMm().doubleValue() - leastMm;
    for (int i = 0; i < COUNT; i++) {
      BigDecimal wantedMm = BigDecimal.valueOf(leastMm + rangeMm * random.nextDouble());
      LengthUnit unit = random.nextBoolean() ? LengthUnit.MM : LengthUnit.IN;
      Reading reading = gauge.set(wantedMm, unit);
      recording.press(reading, 1);
      sentMm.add(reading.valueMm());
    }
    return differences(sentMm, decoded(profile, recording));
  }

  private static List<Double> decoded(String profile, Recording recording) throws FileProblem {
    Gauge gauge = new Gauge(GaugeProfiles.parse("fresh", profile), null);
    List<LineEvent> line = new ArrayList<>(recording.chunks());
    line.add(new LineEvent.End(line.get(line.size() - 1).tS() + 1));
    List<Double> valuesMm = new ArrayList<>();
    for (LineEvent event : line) {
      for (GaugeEvent said : gauge.feed(event)) {
        if (said instanceof GaugeEvent.Live live) {
          valuesMm.add(live.sample().valueMm());
        }
      }
    }
    return valuesMm;
  }

  private static String differences(List<Double> sentMm, List<Double> decodedMm) {
    if (decodedMm.size() != sentMm.size()) {
      return decodedMm.size() + " of " + sentMm.size() + " values decoded";
    }
    for (int i = 0; i < sentMm.size(); i++) {
      if (Math.abs(sentMm.get(i) - decodedMm.get(i)) > SAME_MM) {
        return "sent " + sentMm.get(i) + " mm, decoded " + decodedMm.get(i) + " mm";
      }
    }
    return "";
  }
}
