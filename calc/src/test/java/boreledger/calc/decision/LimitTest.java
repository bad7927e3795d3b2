package boreledger.calc.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LimitTest {
  private static final double MANY = Double.POSITIVE_INFINITY;

  @Test
  void conformanceBetweenLimitsIsThatOfJcgm106Clause74() {
    // JCGM 106:2012, 7.4: y 13.6, u 1.8, limits 12.5 and 16.3; printed 0.66 (from memory).
    double found = new Limit.Between(12.5, 16.3).conformance(13.6, 1.8, MANY);
    assertEquals(0.66, found, 0.005);
    assertEquals(0.6626298, found, 1e-7);
  }

  @Test
  void conformanceToOneLimitIsThatOfJcgm106() {
    // JCGM 106:2012, one-sided examples (from memory): printed 0.92 and 0.99.
    assertEquals(0.919243, new Limit.Upper(-5.40).conformance(-5.47, 0.05, MANY), 1e-6);
    assertEquals(0.989010, new Limit.Lower(490).conformance(509.7, 8.6, MANY), 1e-6);
  }

  @Test
  void conformanceMeetsTheOneSidedTableOfJcgm106() {
    // JCGM 106:2012, Table 1 (from memory): z 0.84, 1.28, 1.64, 2.33, 3.09.
    double[][] table = {{0.84, 0.80}, {1.28, 0.90}, {1.64, 0.95}, {2.33, 0.99}, {3.09, 0.999}};
    for (double[] row : table) {
      assertEquals(row[1], new Limit.Upper(0).conformance(-row[0], 1, MANY), 0.002);
      assertEquals(row[1], new Limit.Lower(0).conformance(row[0], 1, MANY), 0.002);
    }
  }

  @Test
  void guardBandIsThatOfIso14253() {
    // ISO 14253-1:2017: 1.65 u.
    Decision decision = new Limit.Upper(96.15).decide(96.1, 0.002, MANY);
    assertEquals(1.65 * 0.002, decision.guardBandMm(), 0.01 * 0.002);
    // t0.95(5) = 2.015, Table G.2 of JCGM 100:2008 (column 90 %).
    assertEquals(2.015 * 0.002, new Limit.Upper(96.15).decide(96.1, 0.002, 5).guardBandMm(), 1e-7);
  }

  @Test
  void insideAnUpperLimitByLessThanTheGuardBandIsUndecided() {
    Limit limit = new Limit.Upper(96.150);
    assertEquals(State.WITHIN, limit.decide(96.150 - 0.00330, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, limit.decide(96.150 - 0.00328, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, limit.decide(96.150 + 0.00328, 0.002, MANY).state());
    assertEquals(State.BEYOND, limit.decide(96.150 + 0.00330, 0.002, MANY).state());
  }

  @Test
  void aLowerLimitIsTheUpperLimitMirrored() {
    Limit limit = new Limit.Lower(0.30);
    assertEquals(State.WITHIN, limit.decide(0.3033, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, limit.decide(0.3032, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, limit.decide(0.2968, 0.002, MANY).state());
    assertEquals(State.BEYOND, limit.decide(0.2967, 0.002, MANY).state());
  }

  @Test
  void fewDegreesOfFreedomWidenTheUndecidedZone() {
    Limit limit = new Limit.Upper(96.150);
    assertEquals(State.WITHIN, limit.decide(96.1465, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, limit.decide(96.1465, 0.002, 4).state());
  }

  @Test
  void boreOf82H7HasTheAcceptanceZoneOfTheOneSidedFactor() {
    Limit h7 = h7At(82);
    // Acceptance 82.0033 to 82.0317, rejection proven outside 81.9967 and 82.0383 (1.65 u,
    // computed).
    assertEquals(State.WITHIN, h7.decide(82.0033, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, h7.decide(82.0032, 0.002, MANY).state());
    assertEquals(State.WITHIN, h7.decide(82.0317, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, h7.decide(82.0318, 0.002, MANY).state());
    assertEquals(State.BEYOND, h7.decide(81.9967, 0.002, MANY).state());
    assertEquals(State.BEYOND, h7.decide(82.0383, 0.002, MANY).state());
    assertEquals(State.UNDECIDED, h7.decide(82.0382, 0.002, MANY).state());
  }

  @Test
  void boreOf82H7HasTheComputedConformance() {
    Limit h7 = h7At(82);
    assertEquals(0.950529, h7.conformance(82.0033, 0.002, MANY), 1e-6);
    assertEquals(0.691462, h7.conformance(82.034, 0.002, MANY), 1e-6);
    assertEquals(0.480061, h7.conformance(82.0351, 0.002, MANY), 1e-6);
  }

  /** H7: lower deviation 0, upper IT7 of ISO 286-1. */
  private static Limit h7At(double nominalMm) {
    for (Map<String, String> row : ReferenceTable.rows("iso286_it_grades.csv")) {
      double over = Double.parseDouble(row.get("over_mm"));
      double upTo = Double.parseDouble(row.get("up_to_mm"));
      if (row.get("grade").equals("IT7") && nominalMm > over && nominalMm <= upTo) {
        double widthMm = Double.parseDouble(row.get("table_um")) / 1000;
        assertEquals(0.035, widthMm, 1e-12);
        return new Limit.Between(nominalMm, nominalMm + widthMm);
      }
    }
    throw new AssertionError("no IT7 for " + nominalMm + " mm");
  }

  @Test
  void bothTailsCountBetweenNarrowLimits() {
    Limit narrow = new Limit.Between(96.000, 96.006);
    // Middle, 1.5 u to each side: each one-sided share is 0.933, both together 0.866.
    assertEquals(0.866386, narrow.conformance(96.003, 0.002, MANY), 1e-6);
    assertEquals(State.UNDECIDED, narrow.decide(96.003, 0.002, MANY).state());
    // 1.75 u to each side: each one-sided 0.960 would be within, both together 0.920 is not.
    assertEquals(
        State.UNDECIDED, new Limit.Between(96, 96.007).decide(96.0035, 0.002, MANY).state());
  }

  @Test
  void withoutUncertaintyTheValueAloneDecidesAndTheLimitIsAllowed() {
    assertEquals(State.WITHIN, new Limit.Upper(0.05).decide(0.05, 0, MANY).state());
    assertEquals(State.BEYOND, new Limit.Upper(0.05).decide(0.0500001, 0, MANY).state());
    assertEquals(State.WITHIN, new Limit.Between(1, 2).decide(1, 0, MANY).state());
    assertEquals(State.BEYOND, new Limit.Between(1, 2).decide(2.1, 0, MANY).state());
  }

  @Test
  void conformanceIsAProbabilityEverywhere() {
    Seeds.each(
        random -> {
          double value = Seeds.between(random, 90, 100);
          double u = Seeds.between(random, 1e-4, 1);
          double nu = Seeds.between(random, 1, 50);
          double found = new Limit.Between(95, 95.035).conformance(value, u, nu);
          assertTrue(found >= 0 && found <= 1, "conformance " + found);
          double upper = new Limit.Upper(95).conformance(value, u, nu);
          double lower = new Limit.Lower(95).conformance(value, u, nu);
          assertEquals(1, upper + lower, 1e-9);
        });
  }

  @Test
  void anEstimateIsDecidedWithItsOwnDegreesOfFreedom() {
    Estimate taper = new Estimate(0.031, Budget.of(new Component("study", 0.002, 4)));
    Decision decision = new Limit.Upper(0.05).decide(taper);
    assertEquals(4, decision.degreesOfFreedom(), 1e-9);
    assertEquals(0.002, decision.standardUncertaintyMm());
    assertEquals("within", decision.state().word());
  }

  @Test
  void aConformanceOfExactlyNinetyFivePercentIsEnoughOnEitherSide() {
    Limit limit = new Limit.Upper(1);
    assertEquals(State.WITHIN, new Decision(limit, 0, 1, MANY, 0.95).state());
    assertEquals(State.UNDECIDED, new Decision(limit, 0, 1, MANY, 0.9499).state());
    assertEquals(State.UNDECIDED, new Decision(limit, 0, 1, MANY, 0.0501).state());
    // 1 - 0.95 in binary, so that its complement is 0.95 again.
    assertEquals(State.BEYOND, new Decision(limit, 0, 1, MANY, 1 - 0.95).state());
  }

  @Test
  void limitsInTheWrongOrderAreRefused() {
    assertThrows(ImpossibleInput.class, () -> new Limit.Between(96, 96));
    ImpossibleInput refused =
        assertThrows(ImpossibleInput.class, () -> new Limit.Between(96.03, 96.0));
    assertEquals("lower limit 96.03 mm is not below the upper limit 96.0 mm", refused.getMessage());
  }

  @Test
  void aNegativeUncertaintyIsRefused() {
    assertThrows(ImpossibleInput.class, () -> new Limit.Upper(1).decide(0, -1, 5));
    assertThrows(ImpossibleInput.class, () -> new Limit.Upper(1).decide(Double.NaN, 1, 5));
    assertThrows(ImpossibleInput.class, () -> new Limit.Upper(Double.NaN));
    assertThrows(ImpossibleInput.class, () -> new Limit.Lower(Double.NaN));
    assertThrows(ImpossibleInput.class, () -> new Limit.Between(Double.NaN, 1));
    assertThrows(ImpossibleInput.class, () -> new Limit.Between(1, Double.NaN));
  }
}
