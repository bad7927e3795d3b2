package boreledger.calc.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.reference.Seeds;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against every assignment there is, reckoned here in whole hundredths of a millimetre. */
class BestMatchTest {
  /** Bores, rings, targets and limits as hundredths; gaps are few, so that ties are common. */
  private record Shop(int[] ringLengths, int[] perimeters, int[] targets, int[] limits) {
    private static final int NO_LIMIT = -1;

    static Shop random(Random random, int rings, int bores) {
      int[] targets = random.ints(bores, 40, 44).toArray();
      int[] limits =
          Arrays.stream(targets)
              .map(target -> random.nextInt(4) == 0 ? NO_LIMIT : target + random.nextInt(6))
              .toArray();
      return new Shop(
          random.ints(rings, 30_000, 30_008).toArray(),
          random.ints(bores, 30_038, 30_050).toArray(),
          targets,
          limits);
    }

    RingMatch match() {
      List<RingToPlace> rings = new ArrayList<>();
      for (int i = 0; i < ringLengths.length; i++) {
        // Read in a bore of some other perimeter, so that sums of decimals come in.
        rings.add(RingToPlace.gapped("ring " + i, (30_100 - ringLengths[i]) / 100.0, 301.0));
      }
      List<BoreToFill> bores = new ArrayList<>();
      for (int j = 0; j < perimeters.length; j++) {
        Double maxMm = limits[j] == NO_LIMIT ? null : limits[j] / 100.0;
        bores.add(new BoreToFill("bore " + j, perimeters[j] / 100.0, targets[j] / 100.0, maxMm));
      }
      return RingMatch.of(rings, bores);
    }

    boolean allowed(int ring, int bore) {
      return limits[bore] == NO_LIMIT || perimeters[bore] - ringLengths[ring] <= limits[bore];
    }

    /** Empty bores, removal, excess, then each bore's ring; a ring past the last is none. */
    List<Integer> score(int[] ringOf) {
      int empty = 0;
      int removal = 0;
      int excess = 0;
      for (int bore = 0; bore < ringOf.length; bore++) {
        if (ringOf[bore] == ringLengths.length) {
          empty++;
          continue;
        }
        int over = perimeters[bore] - ringLengths[ringOf[bore]] - targets[bore];
        removal += Math.max(0, -over);
        excess += Math.max(0, over);
      }
      List<Integer> score = new ArrayList<>(List.of(empty, removal, excess));
      Arrays.stream(ringOf).forEach(score::add);
      return score;
    }

    int[] ringOf(RingMatch match) {
      int[] ringOf = new int[perimeters.length];
      Arrays.fill(ringOf, ringLengths.length);
      for (Placing placing : match.placings()) {
        int bore = Integer.parseInt(placing.bore().name().substring(5));
        ringOf[bore] = Integer.parseInt(placing.ring().name().substring(5));
      }
      return ringOf;
    }
  }

  private static int compare(List<Integer> one, List<Integer> other) {
    for (int i = 0; i < one.size(); i++) {
      if (!one.get(i).equals(other.get(i))) {
        return one.get(i) - other.get(i);
      }
    }
    return 0;
  }

  /** The best of all ways to go on from a bore. */
  private static List<Integer> bestOfAll(Shop shop, int[] ringOf, int bore, boolean[] used) {
    if (bore == ringOf.length) {
      return shop.score(ringOf);
    }
    int none = shop.ringLengths().length;
    ringOf[bore] = none;
    List<Integer> best = bestOfAll(shop, ringOf, bore + 1, used);
    for (int ring = 0; ring < none; ring++) {
      if (used[ring] || !shop.allowed(ring, bore)) {
        continue;
      }
      used[ring] = true;
      ringOf[bore] = ring;
      List<Integer> here = bestOfAll(shop, ringOf, bore + 1, used);
      best = compare(here, best) < 0 ? here : best;
      used[ring] = false;
    }
    return best;
  }

  @Test
  void matchIsTheBestOfAllAssignmentsTiesIncluded() {
    int largeTried = Seeds.count(random -> checkAgainstAll(random) >= 4);
    assertTrue(largeTried > 100, largeTried + " large ones tried");
  }

  private static int checkAgainstAll(Random random) {
    int bores = 1 + random.nextInt(5);
    int rings = 1 + random.nextInt(5);
    checkAgainstAll(Shop.random(random, rings, bores));
    return Math.min(rings, bores);
  }

  private static RingMatch checkAgainstAll(Shop shop) {
    RingMatch match = shop.match();
    int rings = shop.ringLengths().length;
    List<Integer> best = bestOfAll(shop, new int[shop.perimeters().length], 0, new boolean[rings]);
    assertEquals(best, shop.score(shop.ringOf(match)), shop.toString());
    assertEquals(best.get(0), match.emptyBores().size());
    assertEquals(best.get(1) / 100.0, match.totalRemoveMm(), 0);
    return match;
  }

  @Test
  void sixRingsInSixBoresAreTheBestOfAll() {
    Random random = new Random(66);
    int left = 0;
    for (int i = 0; i < 40; i++) {
      left += checkAgainstAll(Shop.random(random, 6, 6)).emptyBores().size();
    }
    assertTrue(left > 0, "forbidden pairs left no bore empty");
  }

  @Test
  void noneOfAThousandRandomAssignmentsIsBetter() {
    int better = 0;
    Random random = new Random(8);
    Shop shop = Shop.random(random, 24, 24);
    List<Integer> best = shop.score(shop.ringOf(shop.match()));
    List<Integer> order = new ArrayList<>(IntStream.range(0, 24).boxed().toList());
    for (int i = 0; i < 1000; i++) {
      Collections.shuffle(order, random);
      int[] ringOf = new int[24];
      Arrays.setAll(ringOf, bore -> shop.allowed(order.get(bore), bore) ? order.get(bore) : 24);
      List<Integer> score = shop.score(ringOf);
      assertTrue(compare(best, score) <= 0, "seed 8, try " + i + ": " + score + " beats " + best);
      better += compare(best, score) < 0 ? 1 : 0;
    }
    assertTrue(better > 900, "better than " + better);
  }

  @Test
  void sixtyFourRingsInSixtyFourBoresAreFast() {
    Shop shop = Shop.random(new Random(64), 64, 64);
    RingMatch match = assertTimeout(Duration.ofSeconds(10), shop::match);
    assertEquals(64, match.placings().size() + match.emptyBores().size());
    assertEquals(match.emptyBores().size(), match.spareRings().size());
  }
}
