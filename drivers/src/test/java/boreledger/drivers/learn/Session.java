package boreledger.drivers.learn;

import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** A person who sets an invented gauge to what the learner asks for, at most five times. */
final class Session {
  static final int MOST_VALUES = 5;
  private static final List<String> USUAL_MM = List.of("0", "1", "5", "-2.345", "11.234", "2.345");

  private final InventedGauge gauge;
  private final Recording recording;
  private final Random random;
  private final List<ShownValue> shown = new ArrayList<>();
  private final Set<Reading> set = new HashSet<>();
  private Learned learned;

  Session(InventedGauge gauge, long seed) {
    this.gauge = gauge;
    recording = new Recording(gauge, seed);
    random = new Random(seed);
  }

  /** Shows 0, 1 and 5 mm, then what is asked for, until it is certain or five were shown. */
  Learned play() {
    show("0", LengthUnit.MM);
    show("1", LengthUnit.MM);
    show("5", LengthUnit.MM);
    learned = learn();
    while (!learned.certain() && shown.size() < MOST_VALUES) {
      boolean inch = learned.next().words().contains("inch");
      Reading wished = gauge.set(learned.next().mm(), inch ? LengthUnit.IN : LengthUnit.MM);
      if (set.contains(wished)) {
        wished = USUAL_MM.stream().map(this::at).filter(r -> !set.contains(r)).findFirst().get();
      }
      show(wished);
      learned = learn();
    }
    return learned;
  }

  List<ShownValue> shown() {
    return shown;
  }

  private Learned learn() {
    return GaugeLearner.learn(recording.chunks(), shown, Optional.empty());
  }

  private Reading at(String mm) {
    return gauge.set(new BigDecimal(mm), LengthUnit.MM);
  }

  private void show(String mm, LengthUnit unit) {
    show(gauge.set(new BigDecimal(mm), unit));
  }

  private void show(Reading reading) {
    set.add(reading);
    recording.press(reading, 1 + random.nextInt(3) / 2);
    shown.add(new ShownValue(InventedGauge.displayedMm(reading), LengthUnit.MM));
  }
}
