package boreledger.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.reference.ReferenceTable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BudgetTest {
  private static final double NM = 1e-6;

  /** JCGM 100:2008, Annex H.1: an end gauge of 50 mm, from its inputs. */
  private static Budget endGauge() {
    Map<String, Component> in = new HashMap<>();
    for (Map<String, String> row : ReferenceTable.rows("gum_h1_inputs.csv")) {
      String text = row.get("standard_uncertainty");
      double u = Double.parseDouble(text.substring(text.indexOf('=') + 1));
      String dof = row.get("dof");
      double nu = dof.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(dof);
      in.put(row.get("quantity"), new Component(row.get("meaning"), u, nu));
    }
    assertEquals(9, in.size());
    Budget difference = Budget.of(in.get("d_bar"), in.get("d1"), in.get("d2"));
    double ls = 50_000_623;
    return Budget.of(
            in.get("ls"),
            new Component(
                "difference", difference.combinedMm(), difference.effectiveDegreesOfFreedom()),
            in.get("delta_alpha").times(-ls * -0.1),
            in.get("delta_theta").times(-ls * 11.5e-6))
        .times(NM);
  }

  @Test
  void endGaugeOfGumH1HasItsPrintedCombinedUncertainty() {
    // Printed: 32 nm, u^2 = 1002 nm^2; unrounded 31.663879 nm.
    assertEquals(32, endGauge().combinedMm() / NM, 0.5);
    assertEquals(1002, Math.pow(endGauge().combinedMm() / NM, 2), 1);
  }

  @Test
  void endGaugeOfGumH1HasItsPrintedLines() {
    List<Component> lines = endGauge().components();
    // Printed: 25, 9.7, 2.9, 16.6 nm.
    double[] printed = {25, 9.7, 2.9, 16.6};
    assertEquals(printed.length, lines.size());
    for (int i = 0; i < printed.length; i++) {
      assertEquals(printed[i], lines.get(i).standardUncertaintyMm() / NM, 0.05);
    }
  }

  @Test
  void endGaugeOfGumH1HasItsPrintedDegreesOfFreedom() {
    // Printed: 16.7 (from the unrounded 16.75, cut to 16 for the table).
    assertEquals(16.75, endGauge().effectiveDegreesOfFreedom(), 0.02);
    assertEquals(25.6, endGauge().components().get(1).degreesOfFreedom(), 0.2);
  }

  @Test
  void endGaugeOfGumH1HasItsPrintedExpandedUncertaintyWithTheCutDegreesOfFreedom() {
    double cut = Math.floor(endGauge().effectiveDegreesOfFreedom());
    // Printed: t99(16) = 2.92, U99 = 93 nm (2.92 x 32 rounded); unrounded 92.48 nm.
    assertEquals(2.92, StudentT.coverageFactor(0.99, cut), 0.005);
    assertEquals(92.48, StudentT.coverageFactor(0.99, cut) * endGauge().combinedMm() / NM, 0.05);
  }

  @Test
  void degreesOfFreedomAreNotCutToAWholeNumber() {
    // Between t99(17) = 2.8982 and t99(16) = 2.9208 of Table G.2.
    assertTrue(endGauge().coverageFactor(0.99) > 2.8982);
    assertTrue(endGauge().coverageFactor(0.99) < 2.9207);
  }

  @Test
  void threeInputsOfGumG41HaveTheirPrintedFigures() {
    // JCGM 100:2008, G.4.1 (inputs and prints from memory): 0.25 % n 10, 0.57 % n 5, 0.82 % n 15;
    // printed u 1.03 %, 19.0 degrees of freedom, t95 2.09, U95 2.2 %.
    Budget budget =
        Budget.of(
            new Component("first", 0.25, 9),
            new Component("second", 0.57, 4),
            new Component("third", 0.82, 14));
    assertEquals(1.03, budget.combinedMm(), 0.005);
    assertEquals(19.0, budget.effectiveDegreesOfFreedom(), 0.05);
    assertEquals(2.09, budget.coverageFactor(), 0.005);
    assertEquals(2.2, budget.expandedMm(), 0.05);
    assertEquals(2.1547, budget.expandedMm(), 1e-4);
  }

  @Test
  void oneLineKeepsItsOwnDegreesOfFreedom() {
    assertEquals(7, Budget.of(new Component("study", 0.002, 7)).effectiveDegreesOfFreedom(), 1e-12);
  }

  @Test
  void certainLinesAloneHaveInfiniteDegreesOfFreedom() {
    Budget budget = Budget.of(Component.typeB("a", 0.003), Component.typeB("b", 0.004));
    assertEquals(Double.POSITIVE_INFINITY, budget.effectiveDegreesOfFreedom());
    assertEquals(0.005, budget.combinedMm(), 1e-15);
    // 1.96: the last line of JCGM 100:2008, Table G.2.
    assertEquals(1.96 * 0.005, budget.expandedMm(), 0.005 * 0.005);
  }

  @Test
  void noLinesGiveNoUncertainty() {
    Budget none = new Budget(List.of());
    assertEquals(0, none.combinedMm());
    assertEquals(0, none.expandedMm());
    assertEquals(Double.POSITIVE_INFINITY, none.effectiveDegreesOfFreedom());
    assertEquals(List.of(), none.shares());
  }

  @Test
  void linesOfZeroHaveSharesOfZero() {
    Budget zero = Budget.of(new Component("a", 0, 3));
    assertEquals(0, zero.shares().get(0).ofVariance());
    assertEquals(Double.POSITIVE_INFINITY, zero.effectiveDegreesOfFreedom());
  }

  @Test
  void sharesAreOfTheVarianceAndInTheBudgetsOrder() {
    Budget budget = Budget.of(Component.typeB("a", 3), Component.typeB("b", 4));
    assertEquals("a", budget.shares().get(0).component().name());
    assertEquals(0.36, budget.shares().get(0).ofVariance(), 1e-12);
    assertEquals(0.64, budget.shares().get(1).ofVariance(), 1e-12);
  }

  @Test
  void aFactorScalesEveryLineWhateverItsSign() {
    Budget budget = Budget.of(new Component("a", 3, 5), Component.typeB("b", 4)).times(-2);
    assertEquals(10, budget.combinedMm(), 1e-12);
    assertEquals(new Component("a", 6, 5), budget.components().get(0));
  }

  @Test
  void linesAreAddedAtTheEnd() {
    Budget budget = Budget.of(Component.typeB("a", 1)).with(Budget.of(Component.typeB("b", 2)));
    assertEquals(List.of("a", "b"), budget.components().stream().map(Component::name).toList());
  }

  @Test
  void anEstimateShowsItsBudgetsFigures() {
    Estimate estimate = new Estimate(1.5, Budget.of(new Component("a", 0.01, 10)));
    assertEquals(0.01, estimate.standardUncertaintyMm());
    // t95(10) = 2.2281, Table G.2.
    assertEquals(0.022281, estimate.expandedUncertaintyMm(), 1e-6);
  }
}
