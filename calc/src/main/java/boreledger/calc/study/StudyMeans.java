package boreledger.calc.study;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Means of a crossed study and the sums of squares about them, all less the first reading.
 *
 * @param offsets by part, appraiser and trial
 * @param byCell means by part and appraiser
 */
record StudyMeans(
    double[][][] offsets, double[][] byCell, double[] byPart, double[] byAppraiser, double grand) {
  static StudyMeans of(CrossedStudy study) {
    double[][][] offsets = study.offsets();
    int parts = offsets.length;
    int appraisers = offsets[0].length;
    double[][] byCell = new double[parts][appraisers];
    double[] byPart = new double[parts];
    double[] byAppraiser = new double[appraisers];
    for (int p = 0; p < parts; p++) {
      for (int a = 0; a < appraisers; a++) {
        byCell[p][a] = Sample.of(offsets[p][a]).mean();
      }
      byPart[p] = Sample.of(byCell[p]).mean();
    }
    for (int a = 0; a < appraisers; a++) {
      int appraiser = a;
      byAppraiser[a] =
          Sample.of(Arrays.stream(byCell).mapToDouble(cells -> cells[appraiser]).toArray()).mean();
    }
    return new StudyMeans(offsets, byCell, byPart, byAppraiser, Sample.of(byPart).mean());
  }

  double partSquares() {
    return byAppraiser.length * trials() * Sample.of(byPart).squares();
  }

  double appraiserSquares() {
    return byPart.length * trials() * Sample.of(byAppraiser).squares();
  }

  double interactionSquares() {
    double squares = 0;
    for (int p = 0; p < byPart.length; p++) {
      for (int a = 0; a < byAppraiser.length; a++) {
        double off = byCell[p][a] - byPart[p] - byAppraiser[a] + grand;
        squares += off * off;
      }
    }
    return trials() * squares;
  }

  double equipmentSquares() {
    return Arrays.stream(offsets)
        .flatMap(Arrays::stream)
        .mapToDouble(trials -> Sample.of(trials).squares())
        .sum();
  }

  double totalSquares() {
    return Sample.of(
            Arrays.stream(offsets)
                .flatMap(Arrays::stream)
                .flatMapToDouble(Arrays::stream)
                .toArray())
        .squares();
  }

  /** Mean over all appraisers of their mean ranges. */
  double meanRange() {
    return IntStream.range(0, byAppraiser.length)
        .mapToDouble(this::meanRange)
        .average()
        .orElseThrow();
  }

  /** An appraiser's largest minus smallest reading of a part, averaged over the parts. */
  double meanRange(int appraiser) {
    return Sample.of(
            Arrays.stream(offsets)
                .mapToDouble(cells -> Sample.of(cells[appraiser]).range())
                .toArray())
        .mean();
  }

  int trials() {
    return offsets[0][0].length;
  }
}
