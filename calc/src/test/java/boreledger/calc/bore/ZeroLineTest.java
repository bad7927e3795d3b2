package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import java.util.List;
import org.junit.jupiter.api.Test;

class ZeroLineTest {
  private static final SettingStandard FLAT = SettingStandard.ring(96, 0, 0);
  private static final ZeroLine THREE =
      ZeroLine.of(
          new ZeroCheck(0, 0.000, 20),
          new ZeroCheck(100, 0.004, 22),
          new ZeroCheck(200, 0.002, 24));

  @Test
  void runsStraightBetweenNeighbouringChecks() {
    assertEquals(0.001, THREE.readingMm(25), 1e-15);
    assertEquals(0.004, THREE.readingMm(100), 1e-15);
    assertEquals(0.003, THREE.readingMm(150), 1e-15);
    assertEquals(0.002, THREE.readingMm(200), 1e-15);
  }

  @Test
  void isHeldOutsideTheChecks() {
    assertEquals(0.000, THREE.readingMm(-10), 1e-15);
    assertEquals(0.002, THREE.readingMm(900), 1e-15);
  }

  @Test
  void aSingleCheckHolds() {
    ZeroLine one = ZeroLine.of(new ZeroCheck(5, 0.003, 20));
    assertEquals(0.003, one.readingMm(0));
    assertEquals(0.003, one.readingMm(5));
    assertEquals(0.003, one.readingMm(50));
    assertFalse(one.brackets(5));
    assertEquals(0, one.spreadMm(FLAT));
    assertEquals(0, one.changeAroundMm(5, FLAT));
  }

  @Test
  void spreadIsOfAllChecks() {
    assertEquals(0.004, THREE.spreadMm(FLAT), 1e-12);
  }

  @Test
  void growthOfTheStandardIsNoMoveOfTheZero() {
    // 96 mm of steel grow by 0.0022 mm in 2 K, and a gauge with a steady zero shows that much more.
    SettingStandard steel = SettingStandard.ring(96, 0, 11.5e-6);
    ZeroLine warming =
        ZeroLine.of(new ZeroCheck(0, 0, 20), new ZeroCheck(100, 96 * 11.5e-6 * 2, 22));
    assertEquals(0, warming.spreadMm(steel), 1e-12);
    assertEquals(0, warming.changeAroundMm(50, steel), 1e-12);
    assertEquals(0.002208, warming.spreadMm(FLAT), 1e-12);
  }

  @Test
  void bracketsItsEndsAndNothingOutside() {
    assertTrue(THREE.brackets(0));
    assertTrue(THREE.brackets(200));
    assertFalse(THREE.brackets(-0.001));
    assertFalse(THREE.brackets(200.001));
  }

  @Test
  void changeIsThatOfTheChecksAroundATime() {
    assertEquals(0.004, THREE.changeAroundMm(50, FLAT), 1e-12);
    assertEquals(0.002, THREE.changeAroundMm(150, FLAT), 1e-12);
    assertEquals(0, THREE.changeAroundMm(300, FLAT));
  }

  @Test
  void offsetFollowsTheStandardsSizeAtEachCheck() {
    // 100 mm of steel grow by 5.75 um in 5 K (references: Swyt, J. Res. NIST 99 (1994) 31).
    SettingStandard steel = SettingStandard.ring(100, 0, 11.5e-6);
    ZeroLine warming = ZeroLine.of(new ZeroCheck(0, 0, 20), new ZeroCheck(10, 0, 25));
    assertEquals(-100, warming.offsetMm(0, steel), 1e-12);
    assertEquals(-100.002875, warming.offsetMm(5, steel), 1e-12);
    assertEquals(-100.00575, warming.offsetMm(10, steel), 1e-12);
    assertEquals(5, warming.farthestFromReferenceK());
  }

  @Test
  void noCheckIsRefused() {
    assertEquals(
        "0 checks on the setting given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> new ZeroLine(List.of())).getMessage());
  }

  @Test
  void checksThatRunBackInTimeAreRefused() {
    ImpossibleInput refused =
        assertThrows(
            ImpossibleInput.class,
            () -> ZeroLine.of(new ZeroCheck(10, 0, 20), new ZeroCheck(10, 0, 20)));
    assertEquals(
        "check on the setting at 10.0 s is not later than the one before at 10.0 s",
        refused.getMessage());
  }

  @Test
  void aTimeThatIsNoNumberIsRefused() {
    assertThrows(ImpossibleInput.class, () -> THREE.readingMm(Double.NaN));
  }
}
