package boreledger.station.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.profile.Reads;
import boreledger.station.job.Job;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nominal 96 mm, largest oversize 0.5 mm, setting ring 96.002 mm, stroke 104 mm. */
class PlausibleTest {
  private static final double TINY_MM = 1e-6;
  private final Job job = SmallJob.standard().job();

  @ParameterizedTest
  @CsvSource({"95.499999, false", "95.5, true", "97.5, true", "97.500001, false"})
  void aSizeReachesFromHalfAMillimetreBelowNominalToOneAboveTheLargestOversize(
      double sizeMm, boolean possible) {
    Plausible sizes = Plausible.bores(job, Reads.SIZE);

    assertEquals(possible, sizes.refusal(sizeMm).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"-0.502, -1", "1.498, 1"})
  void aDeviationReachesAsFarFromTheSettingRing(double edgeMm, int outward) {
    Plausible deviations = Plausible.bores(job, Reads.DEVIATION);

    assertEquals(Optional.empty(), deviations.refusal(edgeMm - outward * TINY_MM));
    assertEquals(true, deviations.refusal(edgeMm + outward * TINY_MM).isPresent());
  }

  @Test
  void withoutAnOversizeABoreReachesOneMillimetreAboveNominal() {
    Job plain = SmallJob.standard().with("oversizes_mm = [0.50]\n", "").job();

    assertEquals(97, Plausible.bores(plain, Reads.SIZE).highMm());
  }

  @ParameterizedTest
  @CsvSource({"-0.001, false", "0, true", "5, true", "5.001, false"})
  void aGapReachesFromNothingToFiveMillimetres(double gapMm, boolean possible) {
    assertEquals(possible, Plausible.gaps().refusal(gapMm).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"-0.001, false", "0, true", "208, true", "208.001, false"})
  void aRingsDepthReachesFromTheDeckToTwiceTheStroke(double depthMm, boolean possible) {
    assertEquals(possible, Plausible.ringDepths(job).refusal(depthMm).isEmpty());
  }

  @Test
  void aRefusalNamesTheSizeTheLimitsAndWhatToLookAt() {
    assertEquals(
        "bore 98.5420 mm is outside 95.5000 to 97.5000 mm; check the gauge, its unit and its"
            + " setting",
        Plausible.bores(job, Reads.DEVIATION).refusal(2.54).orElseThrow());
  }
}
