package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleTest {
  /** Readings of a NIST StRD file: one column after the dashed line. */
  private static double[] readings(String set) {
    List<String> lines = ReferenceTable.lines(set + ".dat");
    int dashes = 0;
    while (!lines.get(dashes).strip().matches("-{5,}")) {
      dashes++;
    }
    return lines.subList(dashes + 1, lines.size()).stream()
        .filter(line -> !line.isBlank())
        .mapToDouble(line -> Double.parseDouble(line.strip()))
        .toArray();
  }

  /**
   * NIST StRD, univariate summary statistics: certified values. The digits asked of s are those
   * that exact arithmetic gets from the values as doubles, less at most half a digit.
   */
  @ParameterizedTest
  @CsvSource({
    "PiDigits, 5000, 4.53480000000000, 2.86733906028871, 14.5",
    "Lottery, 218, 518.958715596330, 291.699727470969, 14.5",
    "Lew, 200, -177.435000000000, 277.332168044316, 14.5",
    "Mavro, 50, 2.00185600000000, 0.000429123454003053, 12.9",
    "Michelso, 100, 299.852400000000, 0.0790105478190518, 13.5",
    "NumAcc1, 3, 10000002, 1, 15",
    "NumAcc2, 1001, 1.2, 0.1, 14.5",
    "NumAcc3, 1001, 1000000.2, 0.1, 9.4",
    "NumAcc4, 1001, 10000000.2, 0.1, 8.2"
  })
  void certifiedStatisticsAreMet(String set, int count, double mean, double s, double digits) {
    Sample sample = Sample.of(readings(set));
    assertEquals(count, sample.count());
    assertEquals(mean, sample.mean(), Math.abs(mean) * 1e-14);
    double found = sample.standardDeviation().orElseThrow();
    assertEquals(s, found, s * Math.pow(10, -digits));
  }

  @Test
  void temperaturesOfGum443HaveTheirMeanAndUncertainty() {
    // JCGM 100:2008, 4.4.3: printed 100.14 (cut), 1.49, 0.33; longer figures recomputed.
    Sample sample =
        Sample.of(
            ReferenceTable.rows("gum_4_4_3_temperatures.csv").stream()
                .map(row -> Double.valueOf(row.get("t_degC")))
                .toList());
    assertEquals(20, sample.count());
    assertEquals(19, sample.degreesOfFreedom());
    assertEquals(100.145, sample.mean(), 1e-12);
    assertEquals(1.488844, sample.standardDeviation().orElseThrow(), 5e-7);
    assertEquals(0.332916, sample.standardUncertaintyOfMean().orElseThrow(), 5e-7);
    assertEquals(96.90, sample.smallest());
    assertEquals(102.72, sample.largest());
    assertEquals(5.82, sample.range(), 1e-12);
  }

  /**
   * JCGM 100:2008, H.2.4, second approach: quantities read at once are correlated, and a result
   * worked out from each set by itself needs no correlation coefficient. Printed: resistance
   * 127.732 with 0.071, reactance 219.847 with 0.295, impedance 254.260 with 0.236 ohm.
   */
  @Test
  void resultsWorkedOutSetBySetHaveTheUncertaintyOfCorrelatedInputs() {
    double[][] sets =
        ReferenceTable.rows("gum_h2_impedance.csv").stream()
            .map(
                row ->
                    impedance(
                        Double.parseDouble(row.get("V_volt")),
                        Double.parseDouble(row.get("I_milliampere")) / 1000,
                        Double.parseDouble(row.get("phi_rad"))))
            .toArray(double[][]::new);
    assertEquals(5, sets.length);
    double[] printed = {127.732, 219.847, 254.260};
    double[] printedUncertainty = {0.071, 0.295, 0.236};
    for (int k = 0; k < printed.length; k++) {
      int quantity = k;
      Sample sample = Sample.of(Arrays.stream(sets).mapToDouble(set -> set[quantity]).toArray());
      assertEquals(printed[k], sample.mean(), 5e-4);
      double u = sample.standardUncertaintyOfMean().orElseThrow();
      assertEquals(printedUncertainty[k], u, 1e-3);
    }
  }

  /** Resistance, reactance and impedance in ohm. */
  private static double[] impedance(double volt, double ampere, double phaseRad) {
    double ohm = volt / ampere;
    return new double[] {ohm * Math.cos(phaseRad), ohm * Math.sin(phaseRad), ohm};
  }

  @Test
  void checkStandardHasItsLimits() {
    // NIST/SEMATECH e-Handbook 2.6.2: 97.0698, 0.0268, 97.0162, 97.1234 (printed figures from
    // memory, recomputed from the data).
    List<String> lines = ReferenceTable.lines("MPC62.DAT");
    List<String[]> rows =
        lines.subList(50, lines.size()).stream()
            .filter(line -> !line.isBlank())
            .map(line -> line.strip().split("\\s+"))
            .toList();
    double[] readings = rows.stream().mapToDouble(row -> Double.parseDouble(row[10])).toArray();
    Sample sample = Sample.of(readings);
    assertEquals(25, sample.count());
    double s = sample.standardDeviation().orElseThrow();
    assertEquals(97.06984, sample.mean(), 5e-6);
    assertEquals(0.0267981, s, 5e-8);
    assertEquals(97.01624, sample.mean() - 2 * s, 5e-6);
    assertEquals(97.12344, sample.mean() + 2 * s, 5e-6);
    // Short-term standard deviations, each with 5 degrees of freedom, pooled: 0.06139.
    double[] squares =
        rows.stream().mapToDouble(row -> Math.pow(Double.parseDouble(row[11]), 2)).toArray();
    assertEquals(0.0613879, Math.sqrt(Sample.of(squares).mean()), 5.1e-8);
  }

  @Test
  void oneReadingHasNoStandardDeviation() {
    Sample sample = Sample.of(96.02);
    assertEquals(96.02, sample.mean());
    assertEquals(0, sample.range());
    assertEquals(OptionalDouble.empty(), sample.standardDeviation());
    assertEquals(OptionalDouble.empty(), sample.standardUncertaintyOfMean());
  }

  @Test
  void equalReadingsDoNotScatter() {
    assertEquals(0, Sample.of(96.02, 96.02, 96.02).standardDeviation().orElseThrow());
  }

  @Test
  void shiftingMovesTheMeanAndScalingScales() {
    Seeds.each(
        random -> {
          double[] readings = random.doubles(2 + random.nextInt(20), -0.05, 0.05).toArray();
          double shift = Seeds.between(random, -100, 100);
          double scale = Seeds.between(random, 0.1, 25.4);
          double[] changed = Arrays.stream(readings).map(x -> scale * (x + shift)).toArray();
          Sample one = Sample.of(readings);
          Sample other = Sample.of(changed);
          double s = one.standardDeviation().orElseThrow();
          assertEquals(scale * (one.mean() + shift), other.mean(), 1e-11);
          assertEquals(scale * s, other.standardDeviation().orElseThrow(), 1e-9 * scale);
          assertEquals(scale * one.range(), other.range(), 1e-11);
        });
  }

  @Test
  void noReadingsOrNoNumberAreRefused() {
    assertEquals(
        "0 readings given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> Sample.of()).getMessage());
    assertEquals(
        "reading Infinity is not a finite number",
        assertThrows(ImpossibleInput.class, () -> Sample.of(1, Double.POSITIVE_INFINITY))
            .getMessage());
  }
}
