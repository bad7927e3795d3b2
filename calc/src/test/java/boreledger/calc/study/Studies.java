package boreledger.calc.study;

import boreledger.calc.reference.ReferenceTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Crossed studies to try. */
final class Studies {
  private Studies() {}

  /** 10 parts, 3 appraisers, 3 trials: worked example of the AIAG MSA manual, 4th ed., III-B. */
  static CrossedStudy published() {
    List<StudyReading> readings = new ArrayList<>();
    for (Map<String, String> row : ReferenceTable.rows("grr_crossed_10x3x3.csv")) {
      readings.add(
          new StudyReading(
              row.get("part"),
              row.get("appraiser"),
              row.get("trial"),
              Double.parseDouble(row.get("value"))));
    }
    return new CrossedStudy(readings);
  }

  /** Bores near 96 mm with parts, appraisers and trials of any size from the smallest up. */
  static CrossedStudy random(Random random) {
    int parts = 2 + random.nextInt(6);
    int appraisers = 1 + random.nextInt(4);
    int trials = 2 + random.nextInt(3);
    double[] bias = random.doubles(appraisers, 0, 0.01).toArray();
    List<StudyReading> readings = new ArrayList<>();
    for (int p = 0; p < parts; p++) {
      double part = 96 + 0.02 * random.nextGaussian();
      for (int a = 0; a < appraisers; a++) {
        double both = 0.004 * random.nextDouble() * random.nextGaussian();
        for (int t = 0; t < trials; t++) {
          double value = part + bias[a] + both + 0.003 * random.nextGaussian();
          readings.add(new StudyReading("" + p, "" + a, "" + t, value));
        }
      }
    }
    return new CrossedStudy(readings);
  }

  /** Every value of a study changed. */
  static CrossedStudy changed(CrossedStudy study, DoubleUnaryOperator change) {
    return new CrossedStudy(
        study.readings().stream()
            .map(
                reading ->
                    new StudyReading(
                        reading.part(),
                        reading.appraiser(),
                        reading.trial(),
                        change.applyAsDouble(reading.value())))
            .toList());
  }

  /** A study from values by part, appraiser and trial. */
  static CrossedStudy of(double[][][] values) {
    List<StudyReading> readings = new ArrayList<>();
    for (int p = 0; p < values.length; p++) {
      for (int a = 0; a < values[p].length; a++) {
        for (int t = 0; t < values[p][a].length; t++) {
          readings.add(
              new StudyReading("" + (p + 1), "" + (char) ('A' + a), "" + (t + 1), values[p][a][t]));
        }
      }
    }
    return new CrossedStudy(readings);
  }
}
