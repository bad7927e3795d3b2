package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTest {
  /** A millionth of a millimetre; the figures of the sources have more digits. */
  private static final double NANOMETRE = 1e-6;

  /**
   * Perimeters 4aE(k) of ellipses with these half-axes (DLMF 19.30(i)), by mpmath 1.2.1 at 40
   * digits; 3.5 and 2.1 is the published example of the SciPy manual for elliptic integrals,
   * 17.868899204378693.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 1, 9.6884482205476761984",
    "3, 2, 15.865439589290589791",
    "3.5, 2.1, 17.868899204378689926",
    "5, 3, 25.526998863398128466",
    "10, 1, 40.639741801008957426",
    "41.005, 40.995, 257.61059855216568473",
    "50.05, 49.95, 314.15934389880057233"
  })
  void theGapChangesFromACircleToAnEllipseByTheirPerimeters(
      double halfMajorMm, double halfMinorMm, double perimeterMm) {
    double roundMm = 2 * halfMinorMm;

    JsonNode answer = gapChange(roundMm + "," + roundMm, 2 * halfMajorMm + "," + 2 * halfMinorMm);

    assertEquals(Math.PI * roundMm, answer.path("from_perimeter_mm").asDouble(), NANOMETRE);
    assertEquals(perimeterMm, answer.path("to_perimeter_mm").asDouble(), NANOMETRE);
    assertEquals(
        perimeterMm - Math.PI * roundMm, answer.path("gap_change_mm").asDouble(), NANOMETRE);
  }

  @Test
  void theOrderOfTwoAxesDoesNotMatter() {
    assertEquals(gapChange("96.02,96.06", "96.00,96.01"), gapChange("96.06,96.02", "96.01,96.00"));
  }

  /** Common practice, no source: 0.03 mm more bore is about 0.1 mm more gap. */
  @Test
  void wordsSayWhetherTheGapOpensOrClosesAndByHowMuch() {
    String opens =
        Ran.command("figure", "gap-change", "--from", "96,96", "--to", "96.03,96.03")
            .ended(0)
            .out();
    String closes =
        Ran.command("figure", "gap-change", "--from", "96.03,96.03", "--to", "96,96")
            .ended(0)
            .out();

    assertTrue(opens.contains("the gap opens by 0.0942 mm"), opens);
    assertTrue(closes.contains("the gap closes by 0.0942 mm"), closes);
  }

  /**
   * How much too wide a tilted ring's gap reads: the perimeter of the tilted cut less that of the
   * bore, by mpmath 1.2.1 (derived from the geometry, not published).
   */
  @ParameterizedTest
  @CsvSource({
    "82, 0, 0",
    "82, 0.1, 0.0001961819752244",
    "82, 0.5, 0.004904721197491",
    "82, 1, 0.01962103277934",
    "82, 5, 0.4922497956661",
    "100, 0.25, 0.001495300903851",
    "100, 1.5, 0.05384802539394",
    "100, 3, 0.2156045590745",
    "100, 10, 2.427843512466"
  })
  void aTiltedRingReadsTooWideByTheTiltedCut(double boreMm, double tiltDeg, double errorMm) {
    double riseMm = boreMm / 2 * Math.tan(Math.toRadians(tiltDeg));
    String depths =
        (30 + riseMm) + "@0," + (30 - riseMm / 2) + "@120," + (30 - riseMm / 2) + "@240";

    JsonNode answer =
        Ran.command("figure", "tilt", "--bore", boreMm, "--depths", depths, "--json")
            .ended(0)
            .json();

    assertEquals(tiltDeg, answer.path("tilt_deg").asDouble(), 1e-6);
    assertEquals(errorMm, answer.path("gap_error_mm").asDouble(), NANOMETRE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "96.03,wide;96,96;wide",
        "96.03,-96;96,96;-96.0 mm is not above zero",
        "96.03,0;96,96;0.0 mm is not above zero",
        "96,96;NaN,96;NaN",
        "96,96;Infinity,96;Infinity"
      })
  void aDiameterThatCannotBeIsRefusedByItsValue(String from, String to, String named) {
    Ran refused = Ran.command("figure", "gap-change", "--from", from, "--to", to).refused(2);

    assertTrue(refused.err().contains(named), refused::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "96;15.0@0,15.4@90;2 different clock positions",
        "96;15.0@0,15.4@0,15.9@360;1 different clock positions",
        "96;15.0@0,15.4@0.4,15.9@359.8,15@90;2 different clock positions",
        "-96;15.0@0,15.4@90,15.9@180;bore -96.0 mm",
        "0;15.0@0,15.4@90,15.9@180;bore 0.0 mm",
        "wide;15.0@0,15.4@90,15.9@180;--bore",
        "96;15.0,15.4,15.9;15.0 is no depth at a clock position",
        "96;15.0@0,15.4@right,15.9@180;15.4@right",
        "96;15.0@0,15.4@90@2,15.9@180;15.4@90@2",
        "96;15.0@0,-3@90,15.9@180;ring depth -3.0 mm is negative",
        "96;15.0@0,NaN@90,15.9@180;NaN",
        "96;15.0@0,15.0@Infinity,15.9@180;Infinity"
      })
  void depthsThatFixNoPlaneAreRefusedByWhatIsWrong(String bore, String depths, String named) {
    Ran refused = Ran.command("figure", "tilt", "--bore", bore, "--depths", depths).refused(2);

    assertTrue(refused.err().contains(named), refused::toString);
  }

  @Test
  void aSquareRingHasNoTiltAndNoError() {
    JsonNode answer =
        Ran.command("figure", "tilt", "--bore=96", "--depths=15@0,15@90,15@180", "--json").json();

    assertEquals(0, answer.path("tilt_deg").asDouble(), 1e-9);
    assertEquals(0, answer.path("gap_error_mm").asDouble(), 1e-12);
  }

  private static JsonNode gapChange(String from, String to) {
    return Ran.command("figure", "gap-change", "--from", from, "--to", to, "--json")
        .ended(0)
        .json();
  }
}
