package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ControlChartTest {
  @Test
  void everyFactorOfTheTableIsMet() {
    int compared = 0;
    for (Map<String, String> row : ReferenceTable.rows("control_chart_constants.csv")) {
      int n = Integer.parseInt(row.get("n"));
      ChartFactors factors = ChartFactors.of(n);
      assertEquals(Double.parseDouble(row.get("d2")), factors.d2(), 0.0000051, "d2 of " + n);
      assertEquals(Double.parseDouble(row.get("A2")), factors.a2(), 0.0000051, "A2 of " + n);
      assertEquals(Double.parseDouble(row.get("D3")), factors.d3(), 0.0000051, "D3 of " + n);
      assertEquals(Double.parseDouble(row.get("D4")), factors.d4(), 0.0000051, "D4 of " + n);
      compared++;
    }
    assertEquals(24, compared);
  }

  @Test
  void printedFactorsAreMet() {
    // Appendix tables of textbooks: A2 1.8800 1.0233 0.7286, D4 3.2665 2.5746 2.2821.
    double[] a2 = {1.8800, 1.0233, 0.7286};
    double[] d4 = {3.2665, 2.5746, 2.2821};
    for (int n = 2; n <= 4; n++) {
      assertEquals(a2[n - 2], ChartFactors.of(n).a2(), 5e-5);
      assertEquals(d4[n - 2], ChartFactors.of(n).d4(), 5e-5);
    }
  }

  /** The published crossed study as 30 subgroups of three trials, appraiser by appraiser. */
  private static List<List<Double>> publishedSubgroups() {
    CrossedStudy study = Studies.published();
    List<List<Double>> subgroups = new ArrayList<>();
    for (String appraiser : study.appraisers()) {
      for (String part : study.parts()) {
        subgroups.add(
            study.readings().stream()
                .filter(r -> r.appraiser().equals(appraiser) && r.part().equals(part))
                .map(StudyReading::value)
                .toList());
      }
    }
    return subgroups;
  }

  @Test
  void publishedStudyHasItsLimits() {
    // AIAG MSA 4th ed., III-B: mean range 0.3417; times A2 1.023 and D4 2.574. The range of
    // appraiser B on part 4 (0.01, 1.03, 0.20) is out of control there.
    ControlChart chart = ControlChart.of(publishedSubgroups());
    assertEquals(3, chart.subgroupSize());
    assertEquals(0.3417, chart.ranges().center(), 5e-5);
    assertEquals(0, chart.ranges().lower());
    assertEquals(0.3416667 * 2.57459, chart.ranges().upper(), 2e-6);
    assertEquals(0.0014444, chart.means().center(), 5e-8);
    assertEquals(0.0014444 - 0.3416667 * 1.02333, chart.means().lower(), 2e-6);
    assertEquals(0.0014444 + 0.3416667 * 1.02333, chart.means().upper(), 2e-6);
    assertEquals(List.of(13), chart.ranges().outside());
    assertEquals(1.02, chart.ranges().points().get(13), 1e-12);
    assertFalse(chart.stable());
  }

  @Test
  void pointsBeyondEitherLimitAreNamed() {
    List<List<Double>> subgroups = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      subgroups.add(List.of(96.000, 96.002));
    }
    assertTrue(ControlChart.of(subgroups).stable());
    subgroups.set(2, List.of(95.990, 95.992));
    subgroups.set(7, List.of(96.010, 96.012));
    ControlChart chart = ControlChart.of(subgroups);
    assertEquals(List.of(2, 7), chart.means().outside());
    assertTrue(chart.ranges().outside().isEmpty());
  }

  @Test
  void pointOnALimitIsWithinIt() {
    List<Double> points = List.of(-1.0, 0.0, 1.0, 1.001, -1.001);
    assertEquals(List.of(3, 4), new ControlChart.Track(0, -1, 1, points).outside());
  }

  @Test
  void shiftingAndScalingMoveTheLimitsAlong() {
    Seeds.each(
        random -> {
          int size = 2 + random.nextInt(24);
          double shift = Seeds.between(random, -100, 100);
          double scale = Seeds.between(random, 0.1, 25.4);
          List<List<Double>> subgroups = new ArrayList<>();
          List<List<Double>> changed = new ArrayList<>();
          for (int i = 0; i < 5; i++) {
            List<Double> readings = random.doubles(size, -0.01, 0.01).boxed().toList();
            subgroups.add(readings);
            changed.add(readings.stream().map(x -> scale * (x + shift)).toList());
          }
          ControlChart one = ControlChart.of(subgroups);
          ControlChart other = ControlChart.of(changed);
          assertEquals(scale * (one.means().lower() + shift), other.means().lower(), 1e-10);
          assertEquals(scale * (one.means().upper() + shift), other.means().upper(), 1e-10);
          assertEquals(scale * one.ranges().lower(), other.ranges().lower(), 1e-10);
          assertEquals(scale * one.ranges().upper(), other.ranges().upper(), 1e-10);
        });
  }

  @Test
  void subgroupsThatGiveNoChartAreRefused() {
    assertEquals("1 subgroups given, at least 2 needed", refusal(List.of(List.of(1.0, 2.0))));
    assertEquals(
        "subgroup of 1 readings is not of 2 to 25", refusal(List.of(List.of(1.0), List.of(2.0))));
    assertEquals(
        "subgroup 2 has 3 readings, the first has 2",
        refusal(List.of(List.of(1.0, 2.0), List.of(1.0, 2.0, 3.0))));
    assertEquals(
        "subgroup of 26 readings is not of 2 to 25",
        assertThrows(ImpossibleInput.class, () -> ChartFactors.of(26)).getMessage());
  }

  private static String refusal(List<List<Double>> subgroups) {
    return assertThrows(ImpossibleInput.class, () -> ControlChart.of(subgroups)).getMessage();
  }
}
