package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoreProfileTest {
  private static final double[] DEPTHS = {12, 60, 108};

  private static BoreProfile worn() {
    return Gaugings.profile(
        Gaugings.usual(),
        DEPTHS,
        new double[] {96.061, 96.047},
        new double[] {96.035, 96.030},
        new double[] {96.038, 96.012});
  }

  @Test
  void taperIsLargestLessSmallestAlongAnAxis() {
    Taper thrust = worn().taper("thrust").orElseThrow();
    assertEquals(0.026, thrust.amount().valueMm(), 1e-9);
    assertEquals(12, thrust.range().largest().depthMm());
    assertEquals(60, thrust.range().smallest().depthMm());
  }

  @Test
  void signedTaperIsShallowestLessDeepest() {
    assertEquals(0.023, worn().taper("thrust").orElseThrow().signed().valueMm(), 1e-9);
    BoreProfile bell =
        Gaugings.profile(Gaugings.usual(), DEPTHS, row(96.00), row(96.01), row(96.03));
    assertEquals(-0.030, bell.taper("thrust").orElseThrow().signed().valueMm(), 1e-9);
    assertEquals(0.030, bell.taper("thrust").orElseThrow().amount().valueMm(), 1e-9);
  }

  private static double[] row(double... diametersMm) {
    return diametersMm;
  }

  @Test
  void cylindersTaperIsTheLargerOfItsAxes() {
    assertEquals("pin", worn().largestTaper().orElseThrow().axis());
    assertEquals(0.035, worn().largestTaper().orElseThrow().amount().valueMm(), 1e-9);
    assertEquals(List.of("thrust", "pin"), worn().tapers().stream().map(Taper::axis).toList());
  }

  @Test
  void outOfRoundIsLargestLessSmallestAtADepth() {
    List<BoreSection> sections = worn().sections();
    assertEquals(0.014, sections.get(0).outOfRound().orElseThrow().valueMm(), 1e-9);
    assertEquals(0.005, sections.get(1).outOfRound().orElseThrow().valueMm(), 1e-9);
    assertEquals(0.026, worn().largestOutOfRound().orElseThrow().valueMm(), 1e-9);
  }

  @Test
  void meanOfASectionIsThatOfItsAxes() {
    assertEquals(96.054, worn().sections().get(0).meanMm(), 1e-9);
  }

  @Test
  void oneDepthHasNoTaper() {
    BoreProfile one = Gaugings.profile(Gaugings.usual(), new double[] {12}, row(96.0, 96.01));
    assertEquals(Optional.empty(), one.taper("thrust"));
    assertEquals(Optional.empty(), one.largestTaper());
    assertTrue(one.range().isPresent());
  }

  @Test
  void oneAxisHasNoOutOfRound() {
    BoreProfile one = Gaugings.profile(Gaugings.usual(), DEPTHS, row(96.0), row(96.01), row(96.0));
    assertEquals(Optional.empty(), one.sections().get(0).outOfRound());
    assertEquals(Optional.empty(), one.largestOutOfRound());
  }

  @Test
  void anAxisGaugedAtTwoOfThreeDepthsHasTheTaperOfThese() {
    BoreProfile part =
        Gaugings.profile(Gaugings.usual(), DEPTHS, row(96.03, 96.05), row(96.02), row(96.0, 96.01));
    assertEquals(0.04, part.taper("pin").orElseThrow().amount().valueMm(), 1e-9);
  }

  @Test
  void equalReadingsHaveNoTaperButItsUncertainty() {
    BoreProfile straight =
        Gaugings.profile(Gaugings.usual(), DEPTHS, row(96.0, 96), row(96, 96.0), row(96.0, 96));
    Estimate taper = straight.taper("thrust").orElseThrow().amount();
    assertEquals(0, taper.valueMm(), 1e-12);
    assertTrue(taper.standardUncertaintyMm() > 0.001);
    Estimate round = straight.sections().get(0).outOfRound().orElseThrow();
    assertEquals(0, round.valueMm(), 1e-12);
    assertTrue(round.standardUncertaintyMm() > 0.001);
  }

  @Test
  void largestAndSmallestAreOverAllPositions() {
    assertEquals(96.061, worn().largest().diameterMm(), 1e-9);
    assertEquals(96.012, worn().smallest().diameterMm(), 1e-9);
    assertEquals(0.049, worn().range().orElseThrow().estimate().valueMm(), 1e-9);
    BoreProfile single = Gaugings.profile(Gaugings.usual(), new double[] {12}, row(96.0));
    assertEquals(Optional.empty(), single.range());
  }

  @Test
  void perimeterAtAGaugedDepthIsThatOfItsEllipse() {
    Perimeter found = worn().perimeterAt(12);
    // Figures of a 20-digit computation are in ellipse_perimeter.csv; here pi D (1 + h/4).
    double h = Math.pow(0.014 / (2 * 96.108), 2);
    assertEquals(Math.PI * 96.054 * (1 + h / 4), found.lengthMm(), 1e-9);
    assertEquals(Reach.GAUGED, found.reach());
    assertEquals(found.lengthMm(), found.cautiousMm());
    assertFalse(found.reach().beyondReadings());
  }

  @Test
  void perimeterBetweenDepthsIsStraight() {
    BoreProfile profile = worn();
    double upper = profile.perimeterAt(12).lengthMm();
    double lower = profile.perimeterAt(60).lengthMm();
    Perimeter quarter = profile.perimeterAt(24);
    assertEquals(0.75 * upper + 0.25 * lower, quarter.lengthMm(), 1e-12);
    assertEquals(Reach.BETWEEN, quarter.reach());
    assertEquals(quarter.lengthMm(), quarter.cautiousMm());
    assertFalse(quarter.reach().beyondReadings());
    assertEquals(24, quarter.depthMm());
  }

  @Test
  void perimeterBetweenDepthsWeighsTheDiametersOfBoth() {
    Map<Diameter, Double> weights = worn().perimeterAt(24).sensitivity().weights();
    List<Double> perDepth =
        weights.entrySet().stream()
            .filter(each -> each.getKey().axis().equals("pin"))
            .map(Map.Entry::getValue)
            .toList();
    assertEquals(2, perDepth.size());
    assertEquals(Math.PI / 2 * 0.75, perDepth.get(0), 1e-12);
    assertEquals(Math.PI / 2 * 0.25, perDepth.get(1), 1e-12);
  }

  @Test
  void perimeterAboveTheReadingsIsLevelAndMarked() {
    Perimeter above = worn().perimeterAt(5);
    assertEquals(worn().perimeterAt(12).lengthMm(), above.lengthMm());
    assertEquals(above.lengthMm(), above.cautiousMm());
    assertEquals(Reach.ABOVE, above.reach());
    assertTrue(above.reach().beyondReadings());
    assertEquals(5, above.depthMm());
  }

  @Test
  void perimeterBelowTheReadingsIsLevelWithTheNarrowingLineAsCaution() {
    BoreProfile narrowing =
        Gaugings.profile(Gaugings.usual(), DEPTHS, row(96.06), row(96.04), row(96.016));
    Perimeter below = narrowing.perimeterAt(132);
    assertEquals(narrowing.perimeterAt(108).lengthMm(), below.lengthMm());
    // Carried on by half a step of 48 mm: 0.024 mm of diameter in 48 mm.
    assertEquals(Math.PI * 96.004, below.cautiousMm(), 1e-9);
    assertEquals(Reach.BELOW, below.reach());
    assertTrue(below.reach().beyondReadings());
  }

  @Test
  void perimeterBelowTheReadingsOfAWideningBoreIsLevelInBothWays() {
    BoreProfile bell =
        Gaugings.profile(Gaugings.usual(), DEPTHS, row(96.00), row(96.01), row(96.03));
    Perimeter below = bell.perimeterAt(120);
    assertEquals(below.lengthMm(), below.cautiousMm());
  }

  @Test
  void oneDepthIsLevelEverywhere() {
    BoreProfile one = Gaugings.profile(Gaugings.usual(), new double[] {50}, row(96.0));
    assertEquals(Math.PI * 96, one.perimeterAt(0).lengthMm(), 1e-9);
    assertEquals(Math.PI * 96, one.perimeterAt(100).cautiousMm(), 1e-9);
  }

  @Test
  void straightCylinderHasNoTaperAndNoChangeOfPerimeter() {
    Seeds.each(
        random -> {
          double d = Seeds.between(random, 60, 120);
          double oval = Seeds.between(random, -0.05, 0.05);
          double[] same = row(d, d + oval);
          BoreProfile straight = Gaugings.profile(Gaugings.usual(), DEPTHS, same, same, same);
          assertEquals(0, straight.largestTaper().orElseThrow().amount().valueMm(), 1e-11);
          Estimate change = straight.perimeterAt(30).minus(straight.perimeterAt(90));
          assertEquals(0, change.valueMm(), 1e-10);
        });
  }

  @Test
  void swappingAxesLeavesTaperAndRoundness() {
    Seeds.each(
        random -> {
          double[][] rows = new double[3][];
          double[][] swapped = new double[3][];
          for (int j = 0; j < 3; j++) {
            rows[j] = row(Seeds.between(random, 95.9, 96.1), Seeds.between(random, 95.9, 96.1));
            swapped[j] = row(rows[j][1], rows[j][0]);
          }
          BoreProfile one = Gaugings.profile(Gaugings.usual(), DEPTHS, rows);
          BoreProfile other = Gaugings.profile(Gaugings.usual(), DEPTHS, swapped);
          assertEquals(
              one.largestTaper().orElseThrow().amount().valueMm(),
              other.largestTaper().orElseThrow().amount().valueMm(),
              1e-12);
          assertEquals(
              one.largestOutOfRound().orElseThrow().valueMm(),
              other.largestOutOfRound().orElseThrow().valueMm(),
              1e-12);
          assertEquals(one.perimeterAt(33).lengthMm(), other.perimeterAt(33).lengthMm(), 1e-10);
        });
  }

  @Test
  void depthsGivenInAnyOrderAreSorted() {
    BoreGauging session = Gaugings.usual();
    BoreProfile profile =
        BoreProfile.of(
            List.of(
                Gaugings.diameter(session, 60, "pin", 96.01),
                Gaugings.diameter(session, 12, "pin", 96.03)));
    assertEquals(12, profile.sections().get(0).depthMm());
  }

  @Test
  void aPositionGivenTwiceIsRefused() {
    BoreGauging session = Gaugings.usual();
    ImpossibleInput refused =
        assertThrows(
            ImpossibleInput.class,
            () ->
                BoreProfile.of(
                    List.of(
                        Gaugings.diameter(session, 60, "pin", 96.01),
                        Gaugings.diameter(session, 60, "pin", 96.03))));
    assertEquals("an axis is there twice in the section at 60.0 mm", refused.getMessage());
  }

  @Test
  void aDiameterFromAnotherDepthIsRefused() {
    Diameter at60 = Gaugings.diameter(Gaugings.usual(), 60, "pin", 96.01);
    assertEquals(
        "diameter at 60.0 mm put into the section at 12.0 mm",
        assertThrows(ImpossibleInput.class, () -> new BoreSection(12, List.of(at60))).getMessage());
  }

  @Test
  void aSectionWithoutDiametersIsRefused() {
    assertEquals(
        "0 diameters of a section given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> new BoreSection(12, List.of())).getMessage());
  }

  @Test
  void sectionsOutOfOrderAreRefused() {
    List<BoreSection> sections = worn().sections();
    assertEquals(
        "section at 12.0 mm is not deeper than the one before at 60.0 mm",
        assertThrows(
                ImpossibleInput.class,
                () -> new BoreProfile(List.of(sections.get(1), sections.get(0))))
            .getMessage());
    assertThrows(
        ImpossibleInput.class, () -> new BoreProfile(List.of(sections.get(0), sections.get(0))));
    assertEquals(
        "0 gauged depths given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> BoreProfile.of(List.of())).getMessage());
  }

  @Test
  void aNegativeDepthIsRefused() {
    assertThrows(ImpossibleInput.class, () -> worn().perimeterAt(-1));
  }
}
