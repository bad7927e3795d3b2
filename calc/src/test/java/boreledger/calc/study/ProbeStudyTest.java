package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * Gauge study of resistivity probes, NIST/SEMATECH e-Handbook 2.6.1 and 2.6.3: probe 2362, five
 * wafers, six days in each of two runs, six readings a day. Published figures; the longer ones
 * recomputed from the same data.
 */
class ProbeStudyTest {
  private static final int PROBE = 2362;
  private static final int[] WAFERS = {138, 139, 140, 141, 142};

  /** A line of the study: average and standard deviation of six readings on a day. */
  private record Day(int run, int wafer, int probe, double average, double deviation) {}

  private static List<Day> days(Predicate<Day> wanted) {
    List<String> lines = ReferenceTable.lines("MPC61.DAT");
    return lines.subList(50, lines.size()).stream()
        .filter(line -> !line.isBlank())
        .map(line -> line.strip().split("\\s+"))
        .map(
            cells ->
                new Day(
                    Integer.parseInt(cells[0]),
                    (int) Double.parseDouble(cells[1]),
                    (int) Double.parseDouble(cells[2]),
                    Double.parseDouble(cells[7]),
                    Double.parseDouble(cells[8])))
        .filter(wanted)
        .toList();
  }

  private static double[] averages(int run, int wafer, int probe) {
    return days(day -> day.run == run && day.wafer == wafer && day.probe == probe).stream()
        .mapToDouble(Day::average)
        .toArray();
  }

  private static double mean(int run, int wafer, int probe) {
    return Sample.of(averages(run, wafer, probe)).mean();
  }

  /** Six readings a day: what days add, pooled over wafers and, when several, runs. */
  private static OneWayAnova dayToDay(int... runs) {
    List<double[]> groups = new ArrayList<>();
    for (int run : runs) {
      for (int wafer : WAFERS) {
        groups.add(averages(run, wafer, PROBE));
      }
    }
    return OneWayAnova.of(groups);
  }

  private static OneWayAnova runToRun() {
    List<double[]> groups = new ArrayList<>();
    for (int wafer : WAFERS) {
      groups.add(new double[] {mean(1, wafer, PROBE), mean(2, wafer, PROBE)});
    }
    return OneWayAnova.of(groups);
  }

  /** How far the probe is from the mean of all five, by wafer and run. */
  private static Sample probeBias() {
    List<Double> biases = new ArrayList<>();
    for (int run = 1; run <= 2; run++) {
      for (int wafer : WAFERS) {
        List<Double> all = new ArrayList<>();
        for (int probe : new int[] {1, 281, 283, 2062, PROBE}) {
          all.add(mean(run, wafer, probe));
        }
        biases.add(all.get(4) - Sample.of(all).mean());
      }
    }
    return Sample.of(biases);
  }

  @Test
  void waferMeansAreThePublishedOnes() {
    assertEquals(300, days(day -> true).size());
    double[][] published = {
      {95.09282, 99.30595, 96.03573, 101.06022, 94.21482},
      {95.12427, 99.30978, 96.07653, 101.07900, 94.24377}
    };
    for (int run = 1; run <= 2; run++) {
      for (int w = 0; w < 5; w++) {
        assertEquals(published[run - 1][w], mean(run, WAFERS[w], PROBE), 5.1e-6);
      }
    }
  }

  @Test
  void dayToDayScatterIsThePublishedOne() {
    assertEquals(0.0333367, dayToDay(1).residualStandardDeviation(), 5.1e-8);
    assertEquals(0.0387937, dayToDay(2).residualStandardDeviation(), 5.1e-8);
    assertEquals(0.0361682, dayToDay(1, 2).residualStandardDeviation(), 5.1e-8);
    assertEquals(50, dayToDay(1, 2).within().degreesOfFreedom());
  }

  @Test
  void runToRunScatterIsThePublishedOne() {
    assertEquals(0.0196452, runToRun().residualStandardDeviation(), 5.1e-8);
    assertEquals(5, runToRun().within().degreesOfFreedom());
  }

  @Test
  void daysAndRunsHaveTheirPublishedShare() {
    // Published 0.02057092 and 0.01295841, from wafer means rounded to five decimals.
    double day = dayToDay(1, 2).residualStandardDeviation();
    double run = runToRun().residualStandardDeviation();
    double reading =
        Math.sqrt(
            Sample.of(
                    days(d -> d.probe == PROBE).stream()
                        .mapToDouble(d -> d.deviation * d.deviation)
                        .toArray())
                .mean());
    assertEquals(0.0728667, reading, 5.1e-8);
    assertEquals(0.02057092, Math.sqrt(day * day - reading * reading / 6), 5e-6);
    assertEquals(0.01295841, Math.sqrt(run * run - day * day / 6), 5e-6);
  }

  @Test
  void probeBiasIsThePublishedOne() {
    assertEquals(-0.0392653, probeBias().mean(), 5.1e-8);
    assertEquals(0.0161786, probeBias().standardDeviation().orElseThrow(), 5.1e-8);
  }

  @Test
  void typeAUncertaintyIsThePublishedOne() {
    // Published u 0.03875842, 42 degrees of freedom, U 0.0782 (resistivity in ohm.cm; the budget's
    // arithmetic does not know the unit).
    double day = dayToDay(1, 2).residualStandardDeviation();
    Budget budget =
        Budget.of(
            new Component("runs", runToRun().residualStandardDeviation(), 5),
            new Component("days and readings", Math.sqrt(5.0 / 6) * day, 50),
            new Component("probe", probeBias().standardUncertaintyOfMean().orElseThrow(), 9));
    assertEquals(0.0387586, budget.combinedMm(), 5.1e-8);
    assertEquals(42.08, budget.effectiveDegreesOfFreedom(), 0.01);
    assertEquals(0.078218, budget.expandedMm(), 1e-5);
  }
}
