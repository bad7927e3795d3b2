package boreledger.calc.feeler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LeafSetTest {
  private static LeafSet set(double... leavesMm) {
    return new LeafSet(DoubleStream.of(leavesMm).boxed().toList());
  }

  private static LeafStack stack(double totalMm, double offMm, Double... leavesMm) {
    return new LeafStack(List.of(leavesMm), totalMm, offMm);
  }

  @Test
  void nearestStackComesFirstWithItsSign() {
    // By hand: 0.50 is 0.02 short, 0.55 is 0.03 over, then 0.45 from three leaves and so on.
    assertEquals(
        List.of(
            stack(0.5, -0.02, 0.2, 0.3),
            stack(0.55, 0.03, 0.05, 0.2, 0.3),
            stack(0.45, -0.07, 0.05, 0.1, 0.3),
            stack(0.6, 0.08, 0.1, 0.2, 0.3),
            stack(0.4, -0.12, 0.1, 0.3)),
        set(0.05, 0.10, 0.20, 0.30).stacksFor(0.52, 3));
  }

  @Test
  void tenthAndTwoTenthsAreThreeTenths() {
    assertEquals(List.of(stack(0.3, 0.0, 0.1, 0.2)), set(0.2, 0.1).stacksFor(0.3, 2, 1));
  }

  @Test
  void oneLeafGoesBeforeTwoOfTheSameSum() {
    assertEquals(
        List.of(stack(0.3, 0.0, 0.3), stack(0.3, 0.0, 0.1, 0.2)),
        set(0.1, 0.2, 0.3).stacksFor(0.3, 3, 2));
  }

  @Test
  void thinnerStackGoesBeforeTheThickerThatIsAsNear() {
    assertEquals(
        List.of(stack(0.4, -0.05, 0.4), stack(0.5, 0.05, 0.5)),
        set(0.5, 0.4).stacksFor(0.45, 1, 5));
  }

  @Test
  void leafIsUsedOnceAndTwinLeavesMakeOneStack() {
    assertEquals(List.of(stack(0.1, -0.1, 0.1)), set(0.1).stacksFor(0.2, 5, 5));
    assertEquals(
        List.of(stack(0.2, 0.0, 0.1, 0.1), stack(0.1, -0.1, 0.1)),
        set(0.1, 0.1).stacksFor(0.2, 5, 5));
  }

  /** Every subset in whole hundredths, sorted outright. */
  private static List<List<Integer>> allSorted(List<Integer> leaves, int gap, int most) {
    LinkedHashSet<List<Integer>> all = new LinkedHashSet<>();
    for (int mask = 1; mask < 1 << leaves.size(); mask++) {
      int chosen = mask;
      List<Integer> subset = new ArrayList<>();
      IntStream.range(0, leaves.size())
          .filter(i -> (chosen & 1 << i) != 0)
          .forEach(i -> subset.add(leaves.get(i)));
      Collections.sort(subset);
      if (subset.size() <= most) {
        all.add(subset);
      }
    }
    List<List<Integer>> sorted = new ArrayList<>(all);
    sorted.sort(
        Comparator.<List<Integer>>comparingInt(s -> Math.abs(sum(s) - gap))
            .thenComparingInt(List::size)
            .thenComparingInt(LeafSetTest::sum)
            .thenComparing(s -> s.stream().map(leaf -> (char) ('a' + leaf) + "").toList() + ""));
    return sorted;
  }

  private static int sum(List<Integer> leaves) {
    return leaves.stream().mapToInt(Integer::intValue).sum();
  }

  @Test
  void stacksAreThoseOfTryingEverySubset() {
    Seeds.each(
        random -> {
          List<Integer> leaves = random.ints(1 + random.nextInt(8), 1, 20).boxed().toList();
          int gap = 1 + random.nextInt(60);
          int most = 1 + random.nextInt(5);
          int count = 1 + random.nextInt(8);
          List<List<Double>> expected =
              allSorted(leaves, gap, most).stream()
                  .limit(count)
                  .map(subset -> subset.stream().map(leaf -> leaf / 100.0).toList())
                  .toList();
          LeafSet set = new LeafSet(leaves.stream().map(leaf -> leaf / 100.0).toList());
          assertEquals(
              expected,
              set.stacksFor(gap / 100.0, most, count).stream().map(LeafStack::leavesMm).toList());
        });
  }

  @Test
  void thirtyLeavesUpToFourAreFast() {
    Random random = new Random(30);
    LeafSet set = new LeafSet(random.ints(30, 30, 1000).mapToObj(um -> um / 1000.0).toList());
    List<LeafStack> stacks = assertTimeout(Duration.ofSeconds(5), () -> set.stacksFor(1.2345, 4));
    assertEquals(5, stacks.size(), "seed 30");
  }

  @Test
  void impossibleInputIsRefused() {
    assertEquals("0 feeler leaves given, at least 1 needed", message(() -> set()));
    assertEquals("feeler leaf -0.1 mm is not above zero", message(() -> set(0.1, -0.1)));
    assertEquals("gap 0.0 mm is not above zero", message(() -> set(0.1).stacksFor(0, 1)));
    assertEquals(
        "0 leaves to a stack given, at least 1 needed", message(() -> set(0.1).stacksFor(1, 0)));
    assertEquals(
        "0 stacks to tell given, at least 1 needed", message(() -> set(0.1).stacksFor(1, 1, 0)));
    // 2^30 - 1 subsets that are not empty.
    LeafSet thirty = new LeafSet(Collections.nCopies(30, 0.05));
    assertEquals(
        "30 leaves make 1073741823 stacks of up to 30, more than 20000000;"
            + " allow fewer leaves to a stack",
        message(() -> thirty.stacksFor(0.5, 40)));
  }

  private static String message(org.junit.jupiter.api.function.Executable bad) {
    return assertThrows(ImpossibleInput.class, bad).getMessage();
  }
}
