package boreledger.drivers.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PressRuleTest {
  private static final List<String> NONE = List.of();

  private final PickRule rule = new PressRule(new PickSpec.Press(5));

  private List<List<String>> cautions(double everyS, double... valuesMm) {
    List<List<String>> cautions = new ArrayList<>();
    for (int i = 0; i < valuesMm.length; i++) {
      List<PickEvent> events = rule.accept(Samples.at(i * everyS, valuesMm[i]));
      assertEquals(1, events.size());
      cautions.add(((PickEvent.Picked) events.get(0)).cautions());
    }
    return cautions;
  }

  @Test
  void frameIsAReadingAsItStands() {
    Sample sample = Samples.at(2.5, 0.48);
    PickEvent.Picked picked = (PickEvent.Picked) rule.accept(sample).get(0);
    assertEquals(2.5, picked.tS());
    assertEquals(0.48, picked.valueMm());
    assertNull(picked.standardUncertaintyMm());
    assertEquals(List.of(sample), picked.samples());
    assertEquals(NONE, picked.cautions());
    assertEquals(List.of(), rule.end(3));
  }

  @Test
  void equalFramesAtTheSameTimeAreAllReadings() {
    assertEquals(4, cautions(0, 0.5, 0.5, 0.5, 0.5).size());
  }

  @Test
  void equalFramesInQuickSuccessionGetACautionAndAreNotDropped() {
    String fifth = "5 equal frames in quick succession: the key may be stuck";
    String sixth = "6 equal frames in quick succession: the key may be stuck";
    assertEquals(
        List.of(NONE, NONE, NONE, NONE, List.of(fifth), List.of(sixth)),
        cautions(0.1, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5));
  }

  @Test
  void equalFramesAtAPersonsPaceGetNoCaution() {
    assertEquals(List.of(NONE, NONE, NONE, NONE, NONE, NONE), cautions(0.3, 1, 1, 1, 1, 1, 1));
  }

  @Test
  void anotherValueBeginsTheCountAnew() {
    assertEquals(
        List.of(NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE),
        cautions(0.1, 1, 1, 1, 1, 2, 1, 1, 1, 1));
  }
}
