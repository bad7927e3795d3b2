package boreledger.calc.feeler;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.ring.GapBudget;
import boreledger.calc.uncertainty.Estimate;
import java.math.BigDecimal;

/**
 * A gap between a leaf that goes in snugly and the next that will not: anywhere between both with
 * equal chance, each leaf as thick as its permissible error lets it be.
 *
 * @param snugMm the thickest leaf or stack that goes, in millimetres; above zero
 * @param refusedMm the thinnest that will not go; thicker than the snug one
 * @param leafMaxErrorMm the permissible error of a leaf's thickness, of the whole stack where one
 *     is used; zero or more
 */
public record GoNoGo(double snugMm, double refusedMm, double leafMaxErrorMm) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /**
   * Checks the lengths.
   *
   * @throws ImpossibleInput when the leaf that will not go is not thicker
   */
  public GoNoGo {
    Require.positive("leaf that goes", snugMm, "mm");
    Require.finite("leaf that will not go", refusedMm, "mm");
    Require.notNegative("permissible error of a leaf", leafMaxErrorMm, "mm");
    if (refusedMm <= snugMm) {
      throw new ImpossibleInput(
          "leaf that will not go "
              + refusedMm
              + " mm is not thicker than the leaf that goes "
              + snugMm
              + " mm");
    }
  }

  /** From the leaf that goes to the one that does not, in millimetres. */
  public double stepMm() {
    return BigDecimal.valueOf(refusedMm).subtract(BigDecimal.valueOf(snugMm)).doubleValue();
  }

  /** The middle of the interval with u squared = (leaf error)^2 / 3 + (step / 2)^2 / 3. */
  public Estimate gap() {
    BigDecimal sum = BigDecimal.valueOf(snugMm).add(BigDecimal.valueOf(refusedMm));
    return new Estimate(
        sum.divide(TWO).doubleValue(), GapBudget.byFeeler(leafMaxErrorMm, stepMm()));
  }
}
