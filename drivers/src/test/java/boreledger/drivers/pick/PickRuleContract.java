package boreledger.drivers.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.decoder.Sample;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every pick rule must do. */
abstract class PickRuleContract {
  abstract PickRule newRule();

  /** A stream with readings of the rule's kind in it. */
  abstract List<Sample> stream();

  private List<PickEvent> play() {
    return Samples.play(newRule(), stream());
  }

  @Test
  void streamGivesReadings() {
    assertTrue(Samples.picked(play()).size() >= 2);
  }

  @Test
  void samplesOfEventsAreThoseOfTheStreamInOrderAndInOneEventOnly() {
    int from = 0;
    for (PickEvent event : play()) {
      assertFalse(event.samples().isEmpty());
      for (Sample sample : event.samples()) {
        int at = stream().subList(from, stream().size()).indexOf(sample);
        assertTrue(at >= 0, sample + " after number " + from);
        from += at + 1;
      }
    }
    assertTrue(from > 0);
  }

  @Test
  void timeOfAReadingIsWithinItsSamples() {
    for (PickEvent event : play()) {
      List<Sample> samples = event.samples();
      assertTrue(samples.get(0).tS() <= event.tS(), event.toString());
      assertTrue(event.tS() <= samples.get(samples.size() - 1).tS(), event.toString());
    }
  }

  @Test
  void quietBetweenSamplesChangesNothing() {
    PickRule rule = newRule();
    List<PickEvent> events = new ArrayList<>();
    double lastS = stream().get(0).tS();
    for (Sample sample : stream()) {
      events.addAll(rule.quiet((lastS + sample.tS()) / 2));
      events.addAll(rule.quiet(sample.tS()));
      events.addAll(rule.accept(sample));
      lastS = sample.tS();
    }
    events.addAll(rule.end(lastS));
    assertEquals(play(), events);
  }

  @Test
  void endOfAnEmptyStreamGivesNothing() {
    assertEquals(List.of(), newRule().end(0));
  }

  @Test
  void secondEndGivesNothing() {
    PickRule rule = newRule();
    Samples.play(rule, stream());
    assertEquals(List.of(), rule.end(1e6));
    PickRule idle = newRule();
    idle.accept(stream().get(0));
    idle.end(1e6);
    assertEquals(List.of(), idle.end(1e6));
  }
}
