package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.FDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneWayAnovaTest {
  /** Groups of a table of two columns, group and reading, that starts at a line. */
  private static List<double[]> groups(String file, int skip) {
    List<String> lines = ReferenceTable.lines(file);
    Map<String, List<Double>> groups = new TreeMap<>();
    for (String line : lines.subList(skip, lines.size())) {
      if (!line.isBlank()) {
        String[] cells = line.strip().split("\\s+");
        groups.computeIfAbsent(cells[0], none -> new ArrayList<>()).add(Double.valueOf(cells[1]));
      }
    }
    return groups.values().stream()
        .map(group -> group.stream().mapToDouble(Double::doubleValue).toArray())
        .toList();
  }

  /**
   * NIST StRD, analysis of variance: certified values. The digits asked of F are what two passes
   * over doubles less the first value give; SmLs07 and SmLs08 lose the rest when their 13 digits
   * become doubles. SmLs03, 06 and 09, 18009 readings each, are left out for their size.
   */
  @ParameterizedTest
  @CsvSource({
    "SiRstv, 5, 25, 5.11462616000000E-02, 2.16636560000000E-01, 1.18046237440255, 13",
    "SmLs01, 9, 189, 1.68, 1.80, 21.0, 14.4",
    "SmLs02, 9, 1809, 16.08, 18.0, 201.0, 14",
    "SmLs04, 9, 189, 1.68, 1.80, 21.0, 10.2",
    "SmLs05, 9, 1809, 16.08, 18.0, 201.0, 10",
    "SmLs07, 9, 189, 1.68, 1.80, 21.0, 4.2",
    "SmLs08, 9, 1809, 16.08, 18.0, 201.0, 4"
  })
  void certifiedAnalysesAreMet(
      String set, int groups, int count, double between, double within, double f, double digits) {
    OneWayAnova found = OneWayAnova.of(groups(set + ".dat", 60));
    double share = Math.pow(10, -digits);
    assertEquals(groups - 1, found.between().degreesOfFreedom());
    assertEquals(count - groups, found.within().degreesOfFreedom());
    // The loss on becoming doubles is twice as large in the squares; in F some of it cancels.
    assertEquals(between, found.between().amount(), 2 * between * share);
    assertEquals(within, found.within().amount(), 2 * within * share);
    assertEquals(f, found.test().orElseThrow().f(), f * share);
    double s = Math.sqrt(within / (count - groups));
    assertEquals(s, found.residualStandardDeviation(), s * share);
  }

  @Test
  void pinDiametersHaveTheirAnalysis() {
    // NIST/SEMATECH e-Handbook 3.2.3.1: level means as printed; squares and F recomputed from the
    // same data. The handbook's F of 4.86 (from memory) comes from rounded mean squares.
    List<double[]> machines = groups("CHARACTERIZE-3_2_3_1.DAT", 25);
    double[] means = {0.1262, 0.1206, 0.1246, 0.1272, 0.123};
    for (int i = 0; i < 5; i++) {
      assertEquals(means[i], Sample.of(machines.get(i)).mean(), 1e-15);
    }
    OneWayAnova found = OneWayAnova.of(machines);
    assertEquals(4, found.between().degreesOfFreedom());
    assertEquals(20, found.within().degreesOfFreedom());
    assertEquals(0.00013744, found.between().amount(), 1e-15);
    assertEquals(0.000132, found.within().amount(), 1e-15);
    assertEquals(5.20606, found.test().orElseThrow().f(), 5e-6);
  }

  @Test
  void agreesWithTwoOtherLibraries() {
    Seeds.each(
        random -> {
          List<double[]> groups = new ArrayList<>();
          int n = 2 + random.nextInt(6);
          for (int g = 0; g < n; g++) {
            double mean = 0.02 * random.nextGaussian();
            groups.add(random.doubles(2 + random.nextInt(9), mean - 0.03, mean + 0.03).toArray());
          }
          OneWayAnova found = OneWayAnova.of(groups);
          FTest test = found.test().orElseThrow();
          var other = new org.apache.commons.math3.stat.inference.OneWayAnova();
          assertEquals(other.anovaFValue(groups), test.f(), 1e-9 * test.f());
          assertEquals(other.anovaPValue(groups), test.p(), 1e-9);
          double below =
              new FDistribution(
                      found.between().degreesOfFreedom(), found.within().degreesOfFreedom())
                  .cumulativeProbability(test.f());
          assertEquals(1 - below, test.p(), 1e-10);
        });
  }

  @Test
  void groupsThatDoNotVaryWithinCannotBeTested() {
    OneWayAnova found = OneWayAnova.of(List.of(new double[] {1, 1}, new double[] {2, 2}));
    assertEquals(1, found.between().amount(), 1e-15);
    assertTrue(found.test().isEmpty());
  }

  @Test
  void groupsThatGiveNoAnalysisAreRefused() {
    assertEquals("1 groups given, at least 2 needed", refusal(new double[] {1, 2}));
    assertEquals(
        "2 readings in 2 groups given, at least 3 needed",
        refusal(new double[] {1}, new double[] {2}));
    assertEquals(
        "0 readings given, at least 1 needed", refusal(new double[] {1, 2, 3}, new double[0]));
  }

  private static String refusal(double[]... groups) {
    return assertThrows(ImpossibleInput.class, () -> OneWayAnova.of(List.of(groups))).getMessage();
  }
}
