package boreledger.station.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TicksTest {
  @Test
  void stepsAreRound() {
    assertEquals(List.of("0", "20", "40", "60", "80", "100"), labels(0, 115, 7));
    assertEquals(List.of("96.00", "96.05", "96.10", "96.15"), labels(96.0, 96.16, 5));
    assertEquals(List.of("\u22120.2", "0.0", "0.2"), labels(-0.21, 0.3, 3));
  }

  @Test
  void everyLabelHasAsManyDecimalsAsTheStep() {
    assertEquals(List.of("0.30", "0.32", "0.34", "0.36"), labels(0.295, 0.37, 5));
  }

  @Test
  void anyRangeHasAtMostAsManyAsAskedAndAllWithinIt() {
    long seed = 20310506;
    Random random = new Random(seed);
    int seen = 0;
    for (int i = 0; i < 2000; i++) {
      double low = random.nextDouble(-200, 200);
      double high = low + Math.pow(10, random.nextDouble(-4, 4));
      int most = random.nextInt(2, 12);
      Ticks ticks = Ticks.of(new Range(low, high), most);
      String what = "seed " + seed + ": " + low + " to " + high + ", most " + most + ": " + ticks;
      assertTrue(ticks.values().size() <= most, what);
      assertTrue(ticks.values().stream().allMatch(each -> each >= low && each <= high), what);
      assertEquals(ticks.labels().size(), ticks.labels().stream().distinct().count(), what);
      seen += ticks.values().size();
    }
    assertTrue(seen > 2000, "only " + seen + " ticks");
  }

  private static List<String> labels(double low, double high, int most) {
    return Ticks.of(new Range(low, high), most).labels();
  }
}
