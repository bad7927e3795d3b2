package boreledger.calc.study;

import java.util.Optional;

/**
 * The analysis of variance of a crossed study, appraisers and parts taken as random.
 *
 * <p>Parts and appraisers are tested against the interaction, where there is one, else against the
 * equipment. Some printed tables divide by the equipment throughout.
 *
 * @param part variation of the part means
 * @param appraiser variation of the appraiser means; null with one appraiser
 * @param interaction what parts and appraisers do not explain by themselves; null with one
 *     appraiser or when pooled
 * @param equipment variation between trials, with the interaction's when pooled
 * @param total all together
 */
public record AnovaTable(
    SumOfSquares part,
    SumOfSquares appraiser,
    SumOfSquares interaction,
    SumOfSquares equipment,
    SumOfSquares total) {
  /** A sum of squares this small against the total is left over from rounding. */
  private static final double ROUNDING = 1e-28;

  /** Analyses a study. */
  public static AnovaTable of(CrossedStudy study) {
    StudyMeans means = StudyMeans.of(study);
    int parts = means.byPart().length;
    int appraisers = means.byAppraiser().length;
    int readings = study.readings().size();
    int trials = readings / (parts * appraisers);
    double total = means.totalSquares();
    SumOfSquares part = source(means.partSquares(), total, parts - 1);
    SumOfSquares equipment =
        source(means.equipmentSquares(), total, parts * appraisers * (trials - 1));
    SumOfSquares all = new SumOfSquares(total, readings - 1);
    if (appraisers == 1) {
      return new AnovaTable(part, null, null, equipment, all);
    }
    int crossed = (parts - 1) * (appraisers - 1);
    return new AnovaTable(
        part,
        source(means.appraiserSquares(), total, appraisers - 1),
        source(means.interactionSquares(), total, crossed),
        equipment,
        all);
  }

  /** This table with the interaction counted to the equipment; the same when there is none. */
  public AnovaTable pooled() {
    return interaction == null
        ? this
        : new AnovaTable(part, appraiser, null, equipment.pooledWith(interaction), total);
  }

  /** Whether parts differ; empty when what they are tested against is zero. */
  public Optional<FTest> partTest() {
    return FTest.of(part, error());
  }

  /** Whether appraisers differ; empty with one, or when what they are tested against is zero. */
  public Optional<FTest> appraiserTest() {
    return appraiser == null ? Optional.empty() : FTest.of(appraiser, error());
  }

  /** Whether appraisers differ from part to part; empty without interaction or equipment. */
  public Optional<FTest> interactionTest() {
    return interaction == null ? Optional.empty() : FTest.of(interaction, equipment);
  }

  /** What parts and appraisers are tested against. */
  SumOfSquares error() {
    return interaction == null ? equipment : interaction;
  }

  private static SumOfSquares source(double amount, double total, int degreesOfFreedom) {
    return new SumOfSquares(amount < ROUNDING * total ? 0 : amount, degreesOfFreedom);
  }
}
