package boreledger.station.bench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.job.DisplayUnit;
import org.junit.jupiter.api.Test;

class LengthsTest {
  private final Lengths mm = new Lengths(DisplayUnit.MM);
  private final Lengths inches = new Lengths(DisplayUnit.IN);

  @Test
  void millimetresHaveFourDecimals() {
    assertEquals("96.0213 mm", mm.size(96.0213));
    assertEquals("0.4800 mm", mm.size(0.48));
  }

  /** One inch is 25.4 mm exactly (ISO 31-1, and by law since 1959). */
  @Test
  void inchesHaveFiveDecimals() {
    assertEquals("1.00000 in", inches.size(25.4));
    assertEquals("3.77953 in", inches.size(96.0));
    assertEquals("+0.00001 in", inches.deviation(0.000254));
  }

  @Test
  void halvesAreRoundedAwayFromZero() {
    assertEquals("96.0213 mm", mm.size(96.02125));
    assertEquals("\u22120.0013 mm", mm.deviation(-0.00125));
  }

  @Test
  void deviationsHaveTheirSignAndZeroHasNone() {
    assertEquals("+0.0130 mm", mm.deviation(0.013));
    assertEquals("\u22120.0130 mm", mm.deviation(-0.013));
    assertEquals("0.0000 mm", mm.deviation(0));
    assertEquals("0.0000 mm", mm.deviation(-0.00004));
  }

  @Test
  void onlyANegativeSizeHasASign() {
    assertEquals("0.4800", mm.number(0.48));
    assertEquals("\u22120.0100", mm.number(-0.01));
  }

  @Test
  void depthsHaveAsFewDecimalsAsTheyCan() {
    assertEquals("60 mm", mm.depth(60.0));
    assertEquals("7.25 mm", mm.depth(7.25));
    assertEquals("0 mm", mm.depth(0.0));
    assertEquals("2.362 in", inches.depth(60.0));
    assertEquals("2 in", inches.depth(50.8));
  }
}
