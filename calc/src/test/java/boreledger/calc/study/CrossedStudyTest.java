package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class CrossedStudyTest {
  private static String refusal(List<StudyReading> readings) {
    return assertThrows(ImpossibleInput.class, () -> new CrossedStudy(readings)).getMessage();
  }

  private static List<StudyReading> published() {
    return new ArrayList<>(Studies.published().readings());
  }

  @Test
  void publishedStudyIsTenByThreeByThree() {
    CrossedStudy study = Studies.published();
    assertEquals(90, study.readings().size());
    assertEquals(List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10"), study.parts());
    assertEquals(List.of("A", "B", "C"), study.appraisers());
    assertEquals(List.of("1", "2", "3"), study.trials());
  }

  @Test
  void theOrderOfReadingsDoesNotMatter() {
    GaugeVariation expected = AnovaStudy.of(Studies.published()).variation();
    Seeds.each(
        random -> {
          List<StudyReading> readings = published();
          Collections.shuffle(readings, random);
          GaugeVariation found = AnovaStudy.of(new CrossedStudy(readings)).variation();
          assertEquals(expected.grr(), found.grr(), 1e-13);
          assertEquals(expected.pv(), found.pv(), 1e-13);
        });
  }

  @Test
  void aMissingReadingIsNamed() {
    List<StudyReading> readings = published();
    readings.removeIf(
        r -> r.part().equals("7") && r.appraiser().equals("B") && r.trial().equals("2"));
    assertEquals(
        "part 7, appraiser B, trial 2 missing from the study; every appraiser gauges every part in"
            + " every trial",
        refusal(readings));
  }

  @Test
  void severalMissingReadingsAreCounted() {
    List<StudyReading> readings = published();
    readings.removeIf(r -> r.part().equals("7") && r.appraiser().equals("B"));
    assertEquals(
        "part 7, appraiser B, trial 1 and 2 more missing from the study; every appraiser gauges"
            + " every part in every trial",
        refusal(readings));
  }

  @Test
  void aDoubledReadingIsNamedWithBothValues() {
    List<StudyReading> readings = published();
    readings.add(new StudyReading("1", "A", "1", 0.31));
    assertEquals(
        "part 1, appraiser A, trial 1 is in the study twice, 0.29 and 0.31; keep one",
        refusal(readings));
  }

  @Test
  void aStudyTooSmallIsRefused() {
    assertEquals("0 parts in the study given, at least 2 needed", refusal(List.of()));
    List<StudyReading> onePart = published();
    onePart.removeIf(r -> !r.part().equals("3"));
    assertEquals("1 parts in the study given, at least 2 needed", refusal(onePart));
    List<StudyReading> oneTrial = published();
    oneTrial.removeIf(r -> !r.trial().equals("3"));
    assertEquals("1 trials in the study given, at least 2 needed", refusal(oneTrial));
  }

  @Test
  void aReadingThatIsNoNumberIsNamed() {
    ImpossibleInput refused =
        assertThrows(
            ImpossibleInput.class, () -> new StudyReading("liner 2", "A", "1", Double.NaN));
    assertEquals(
        "reading of part liner 2, appraiser A, trial 1 NaN is not a finite number",
        refused.getMessage());
  }

  @Test
  void aToleranceOfNothingIsRefused() {
    GaugeVariation found = AnovaStudy.of(Studies.published()).variation();
    assertEquals(
        "tolerance 0.0 is not above zero",
        assertThrows(ImpossibleInput.class, () -> found.percentOfTolerance(0)).getMessage());
  }
}
