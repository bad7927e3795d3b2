package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Feeds samples to a pick rule. */
final class Samples {
  private Samples() {}

  static Sample at(double tS, double valueMm) {
    Bytes raw = Bytes.of(Double.toString(valueMm).getBytes(StandardCharsets.US_ASCII));
    return new Sample(tS, raw, valueMm, LengthUnit.MM, false);
  }

  /** Every event of the samples, and of the end. */
  static List<PickEvent> play(PickRule rule, List<Sample> samples) {
    List<PickEvent> events = new ArrayList<>();
    samples.forEach(sample -> events.addAll(rule.accept(sample)));
    events.addAll(rule.end(samples.get(samples.size() - 1).tS()));
    return events;
  }

  static List<Double> picked(List<PickEvent> events) {
    return events.stream()
        .filter(PickEvent.Picked.class::isInstance)
        .map(event -> ((PickEvent.Picked) event).valueMm())
        .toList();
  }

  static List<String> notPicked(List<PickEvent> events) {
    return events.stream()
        .filter(PickEvent.NotPicked.class::isInstance)
        .map(event -> ((PickEvent.NotPicked) event).why())
        .toList();
  }
}
