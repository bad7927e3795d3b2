package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Readings of a study in which every appraiser gauges every part in every trial, once each.
 *
 * <ul>
 *   <li>One appraiser is enough; then nothing is learned about reproducibility.
 *   <li>Fewer than two parts or trials, a missing reading or a doubled one: refused, and the
 *       message names it.
 * </ul>
 *
 * @param readings in any order; kept as given
 */
public record CrossedStudy(List<StudyReading> readings) {
  /**
   * Checks that the study is complete.
   *
   * @throws ImpossibleInput when it is too small, a reading is missing or there twice
   */
  public CrossedStudy {
    readings = List.copyOf(readings);
    Require.atLeast(2, names(readings, StudyReading::part).size(), "parts in the study");
    Require.atLeast(2, names(readings, StudyReading::trial).size(), "trials in the study");
    refuseMissing(readings, byCell(readings));
  }

  /** The parts in the order of their first reading. */
  public List<String> parts() {
    return names(readings, StudyReading::part);
  }

  /** The appraisers in the order of their first reading. */
  public List<String> appraisers() {
    return names(readings, StudyReading::appraiser);
  }

  /** The trials in the order of their first reading. */
  public List<String> trials() {
    return names(readings, StudyReading::trial);
  }

  /** Values less the first reading's, by part, appraiser and trial. */
  double[][][] offsets() {
    Map<String, Double> values = byCell(readings);
    double first = readings.get(0).value();
    List<String> parts = parts();
    List<String> appraisers = appraisers();
    List<String> trials = trials();
    double[][][] offsets = new double[parts.size()][appraisers.size()][trials.size()];
    for (int p = 0; p < offsets.length; p++) {
      for (int a = 0; a < offsets[p].length; a++) {
        for (int t = 0; t < offsets[p][a].length; t++) {
          String cell = StudyReading.cell(parts.get(p), appraisers.get(a), trials.get(t));
          offsets[p][a][t] = values.get(cell) - first;
        }
      }
    }
    return offsets;
  }

  private static List<String> names(
      List<StudyReading> readings, Function<StudyReading, String> name) {
    return readings.stream().map(name).distinct().toList();
  }

  private static Map<String, Double> byCell(List<StudyReading> readings) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (StudyReading reading : readings) {
      String cell = StudyReading.cell(reading.part(), reading.appraiser(), reading.trial());
      Double earlier = values.put(cell, reading.value());
      if (earlier != null) {
        throw new ImpossibleInput(
            cell + " is in the study twice, " + earlier + " and " + reading.value() + "; keep one");
      }
    }
    return values;
  }

  private static void refuseMissing(List<StudyReading> readings, Map<String, Double> values) {
    List<String> missing = new ArrayList<>();
    for (String part : names(readings, StudyReading::part)) {
      for (String appraiser : names(readings, StudyReading::appraiser)) {
        for (String trial : names(readings, StudyReading::trial)) {
          String cell = StudyReading.cell(part, appraiser, trial);
          if (!values.containsKey(cell)) {
            missing.add(cell);
          }
        }
      }
    }
    if (!missing.isEmpty()) {
      String more = missing.size() == 1 ? "" : " and " + (missing.size() - 1) + " more";
      throw new ImpossibleInput(
          missing.get(0)
              + more
              + " missing from the study; every appraiser gauges every part in"
              + " every trial");
    }
  }
}
