package boreledger.calc.input;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class RequireTest {
  private static String refusal(Executable bad) {
    return assertThrows(ImpossibleInput.class, bad).getMessage();
  }

  @Test
  void possibleValuesPassUnchanged() {
    assertEquals(-3.5, Require.finite("drift", -3.5, "mm"));
    assertEquals(0.1, Require.positive("bore", 0.1, "mm"));
    assertEquals(0, Require.notNegative("depth", 0, "mm"));
    assertDoesNotThrow(() -> Require.atLeast(2, 2, "depths"));
  }

  @Test
  void impossibleValuesAreNamedWithTheirUnit() {
    assertEquals(
        "bore NaN mm is not a finite number",
        refusal(() -> Require.positive("bore", Double.NaN, "mm")));
    assertEquals("bore 0.0 mm is not above zero", refusal(() -> Require.positive("bore", 0, "mm")));
    assertEquals(
        "depth -1.0 mm is negative", refusal(() -> Require.notNegative("depth", -1, "mm")));
    assertEquals(
        "1 depths given, at least 2 needed", refusal(() -> Require.atLeast(2, 1, "depths")));
  }

  @Test
  void aPlainNumberIsNamedWithoutAUnit() {
    assertEquals(
        "slope -Infinity is not a finite number",
        refusal(() -> Require.finite("slope", Double.NEGATIVE_INFINITY, "")));
  }
}
