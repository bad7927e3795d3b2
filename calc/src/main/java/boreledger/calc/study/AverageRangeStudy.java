package boreledger.calc.study;

import java.util.ArrayList;
import java.util.List;

/**
 * A crossed study judged by averages and ranges (AIAG MSA 4th ed., chapter III, section B).
 *
 * <p>EV is the mean range over d2 of the trials (K1); AV comes from the largest difference between
 * appraisers over d2* (K2), less what repeatability puts into it, and is 0 when that is more; PV is
 * the range of the part means over d2* (K3). K1, K2 and K3 are taken to four decimals, as the
 * manual's tables have them, so that a study worked by hand comes out the same.
 *
 * <ul>
 *   <li>The method cannot see an interaction: it is null.
 *   <li>One appraiser: appraiser variation 0.
 * </ul>
 *
 * @param appraisers each appraiser's mean and mean range, in the study's order
 * @param meanRange mean of the ranges over the trials
 * @param appraiserDifference largest minus smallest appraiser mean
 * @param partRange largest minus smallest part mean
 * @param variation what came out
 */
public record AverageRangeStudy(
    List<Appraiser> appraisers,
    double meanRange,
    double appraiserDifference,
    double partRange,
    GaugeVariation variation) {
  /** Takes a copy of the list. */
  public AverageRangeStudy {
    appraisers = List.copyOf(appraisers);
  }

  /**
   * One appraiser's share in a study.
   *
   * @param name who
   * @param mean of all readings
   * @param meanRange mean of the ranges over the trials
   */
  public record Appraiser(String name, double mean, double meanRange) {}

  /** Judges a study. */
  public static AverageRangeStudy of(CrossedStudy study) {
    StudyMeans means = StudyMeans.of(study);
    int parts = means.byPart().length;
    double difference = Sample.of(means.byAppraiser()).range();
    double partRange = Sample.of(means.byPart()).range();
    double ev = means.meanRange() * factor(RelativeRange.of(means.trials()).d2());
    double pv = partRange * factor(RelativeRange.of(parts).d2Star(1));
    double av = appraiserVariation(means, difference, ev);
    return new AverageRangeStudy(
        appraisers(study, means),
        means.meanRange(),
        difference,
        partRange,
        new GaugeVariation(ev, av, null, pv));
  }

  private static double appraiserVariation(StudyMeans means, double difference, double ev) {
    int appraisers = means.byAppraiser().length;
    if (appraisers == 1) {
      return 0;
    }
    double apart = difference * factor(RelativeRange.of(appraisers).d2Star(1));
    int readingsEach = means.byPart().length * means.trials();
    return Math.sqrt(Math.max(0, apart * apart - ev * ev / readingsEach));
  }

  /** One over d2 or d2*, to four decimals. */
  private static double factor(double meanRelativeRange) {
    return Math.round(1e4 / meanRelativeRange) / 1e4;
  }

  private static List<Appraiser> appraisers(CrossedStudy study, StudyMeans means) {
    List<String> names = study.appraisers();
    List<Appraiser> all = new ArrayList<>();
    for (int a = 0; a < names.size(); a++) {
      double mean = study.readings().get(0).value() + means.byAppraiser()[a];
      all.add(new Appraiser(names.get(a), mean, means.meanRange(a)));
    }
    return all;
  }
}
