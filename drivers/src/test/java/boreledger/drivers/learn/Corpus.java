package boreledger.drivers.learn;

import java.util.List;
import java.util.stream.Stream;

/** Every invented gauge. */
final class Corpus {
  private Corpus() {}

  /** Those that five shown values ought to be enough for. */
  static List<InventedGauge> knowable() {
    return Stream.of(TextGauges.all(), BinaryGauges.all(), DigitGauges.all(), RegisterGauges.all())
        .flatMap(List::stream)
        .toList();
  }

  /** Those of which nobody may be certain. */
  static List<InventedGauge> unknowable() {
    return UnknowableGauges.all();
  }
}
