package boreledger.station.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.job.DisplayUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {
  private final LengthFormat mm = new LengthFormat(DisplayUnit.MM);
  private final LengthFormat inches = new LengthFormat(DisplayUnit.IN);

  /**
   * JCGM 100:2008, 7.2.2 states a result of 100,021 47 with the expanded uncertainty 0,000 79;
   * 7.2.6 asks for two significant digits at most and for a result rounded to match.
   */
  @ParameterizedTest
  @CsvSource({
    "100.0214732, 0.00079, 100.02147 ± 0.00079",
    "96.0213, 0.00334449, 96.0213 ± 0.0033",
    "96.02135, 0.00995, 96.021 ± 0.010",
    "0.05, 0.0996, 0.05 ± 0.10",
    "0.4148, 12.3, 0 ± 12"
  })
  void aValueHasTheDigitsOfTwoDigitsOfItsUncertainty(double value, double u, String expected) {
    assertEquals(expected, mm.number(value, u));
  }

  @Test
  void withoutUncertaintyItHasTheUsualDigits() {
    assertEquals("0.4200", mm.number(0.42, (Double) null));
    assertEquals("0.01654", inches.number(0.42, (Double) null));
  }

  /** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
  @Test
  void anInchIsConvertedExactly() {
    assertEquals("3.78000 ± 0.00010", inches.number(96.012, 0.00254));
    assertEquals("3.7800", inches.stated(96.012));
  }

  @Test
  void whatIsNotKnownIsADash() {
    assertEquals("-", mm.number(null, 0.1));
    assertEquals("-", mm.difference(null, 3));
  }

  @Test
  void aNegativeNumberHasARealMinus() {
    assertEquals("\u22120.0341", mm.difference(-0.03412, 4));
    assertEquals("+0.0341", mm.difference(0.03412, 4));
  }

  @Test
  void whatRoundsToZeroHasNoSign() {
    assertEquals("0.0000", mm.difference(-0.00004, 4));
    assertEquals("0.0000", mm.difference(0.00004, 4));
  }

  @ParameterizedTest
  @CsvSource({"96.03, 96.030", "96.0305, 96.0305", "0, 0.000", "0.25, 0.250"})
  void aStatedLengthKeepsItsOwnDigits(double stated, String expected) {
    assertEquals(expected, mm.stated(stated));
  }

  @ParameterizedTest
  @CsvSource({"12.0, 12, 0.472", "12.7, 12.7, 0.5", "0, 0, 0"})
  void aDepthIsAsShortAsItCanBe(double depth, String inMm, String inInches) {
    assertEquals(inMm, mm.depth(depth));
    assertEquals(inInches, inches.depth(depth));
  }
}
