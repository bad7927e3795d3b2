package boreledger.calc.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;

class LeastCostTest {
  @Test
  void publishedAssignmentsComeOut() {
    // Minimum-cost assignments of the SciPy documentation and test suite (assignment_small.csv).
    Map<String, List<Map<String, String>>> cases = new LinkedHashMap<>();
    for (Map<String, String> row : ReferenceTable.rows("assignment_small.csv")) {
      cases.computeIfAbsent(row.get("case"), name -> new ArrayList<>()).add(row);
    }
    assertEquals(6, cases.size());
    cases.forEach(
        (name, rows) -> {
          BigInteger[][] costs =
              rows.stream().map(row -> costs(row.get("costs"))).toArray(BigInteger[][]::new);
          int[] columns = LeastCost.columns(costs);
          for (int row = 0; row < columns.length; row++) {
            String published = rows.get(row).get("assigned_cost");
            assertEquals(new BigInteger(published), costs[row][columns[row]], name);
          }
          assertEquals(
              Long.parseLong(rows.get(0).get("total_minimum")), total(costs, columns), name);
        });
  }

  private static BigInteger[] costs(String cells) {
    return Arrays.stream(cells.split(" "))
        .map(cell -> cell.equals("inf") ? null : new BigInteger(cell))
        .toArray(BigInteger[]::new);
  }

  @Test
  void totalIsThatOfAnotherLibrary() {
    // Kuhn-Munkres of JGraphT 1.5.2 on whole numbers below 2^53, exact in its doubles.
    Seeds.each(
        random -> {
          int size = 1 + random.nextInt(12);
          BigInteger[][] costs = random(random, size, size, 1 + random.nextInt(1000));
          assertEquals(kuhnMunkres(costs), total(costs, LeastCost.columns(costs)));
        });
  }

  private static long kuhnMunkres(BigInteger[][] costs) {
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    int size = costs.length;
    IntStream.range(0, 2 * size).forEach(graph::addVertex);
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        graph.setEdgeWeight(graph.addEdge(row, size + column), costs[row][column].doubleValue());
      }
    }
    Set<Integer> rows = IntStream.range(0, size).boxed().collect(Collectors.toSet());
    Set<Integer> columns = IntStream.range(size, 2 * size).boxed().collect(Collectors.toSet());
    return (long)
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, rows, columns)
            .getMatching()
            .getWeight();
  }

  @Test
  void eachRowHasItsOwnColumn() {
    Seeds.each(
        random -> {
          BigInteger[][] costs = random(random, 1 + random.nextInt(8), 8, 10);
          int[] columns = LeastCost.columns(costs);
          assertEquals(columns.length, Arrays.stream(columns).distinct().count());
        });
  }

  @Test
  void smallTermBesideAHugeOneStillDecides() {
    BigInteger huge = BigInteger.TEN.pow(200);
    BigInteger[][] costs = {
      {huge, huge.add(BigInteger.ONE)}, {huge, huge.add(BigInteger.TWO)},
    };
    assertArrayEquals(new int[] {1, 0}, LeastCost.columns(costs));
  }

  @Test
  void rowWithNowhereToGoIsRefused() {
    BigInteger[][] costs = {{BigInteger.ONE, null}, {BigInteger.ONE, null}};
    assertThrows(IllegalArgumentException.class, () -> LeastCost.columns(costs));
  }

  @Test
  void hundredRowsAreFast() {
    BigInteger[][] costs = random(new Random(1), 100, 200, 1_000_000);
    int[] columns = assertTimeout(Duration.ofSeconds(10), () -> LeastCost.columns(costs), "seed 1");
    assertEquals(100, columns.length);
  }

  private static BigInteger[][] random(Random random, int rows, int columns, int below) {
    BigInteger[][] costs = new BigInteger[rows][columns];
    for (BigInteger[] row : costs) {
      Arrays.setAll(row, column -> BigInteger.valueOf(random.nextInt(below)));
    }
    return costs;
  }

  private static long total(BigInteger[][] costs, int[] columns) {
    return IntStream.range(0, columns.length)
        .mapToLong(row -> costs[row][columns[row]].longValueExact())
        .sum();
  }
}
