package boreledger.calc.feeler;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;

/**
 * A set of feeler leaves.
 *
 * @param leavesMm their thicknesses in millimetres, one or more, each above zero; kept thinnest
 *     first; a thickness that is there twice is two leaves
 */
public record LeafSet(List<Double> leavesMm) {
  /** How many stacks are told when nothing else is asked for. */
  public static final int DEFAULT_STACKS = 5;

  private static final BigInteger MOST_STACKS_TRIED = BigInteger.valueOf(20_000_000);

  /** Sorts a copy of the leaves and checks them. */
  public LeafSet {
    Require.atLeast(1, leavesMm.size(), "feeler leaves");
    leavesMm.forEach(leafMm -> Require.positive("feeler leaf", leafMm, "mm"));
    leavesMm = leavesMm.stream().sorted().toList();
  }

  /** The five best stacks for a gap. */
  public List<LeafStack> stacksFor(double gapMm, int mostLeaves) {
    return stacksFor(gapMm, mostLeaves, DEFAULT_STACKS);
  }

  /**
   * The stacks nearest to a gap: nearest first, whether thinner or thicker; of equally near ones
   * that of fewest leaves first, then the thinner stack, then the one whose thinnest leaves are
   * thinner. Stacks of the same thicknesses are one.
   *
   * @param gapMm the gap to make in millimetres; above zero
   * @param mostLeaves how many leaves a stack may have; 1 or more
   * @param count how many stacks are told at most; 1 or more
   * @throws ImpossibleInput when there are more than 20 million stacks to try
   */
  public List<LeafStack> stacksFor(double gapMm, int mostLeaves, int count) {
    Require.positive("gap", gapMm, "mm");
    Require.atLeast(1, mostLeaves, "leaves to a stack");
    Require.atLeast(1, count, "stacks to tell");
    int most = Math.min(mostLeaves, leavesMm.size());
    BigInteger stacks = stacksOfUpTo(most);
    if (stacks.compareTo(MOST_STACKS_TRIED) > 0) {
      throw new ImpossibleInput(
          leavesMm.size()
              + " leaves make "
              + stacks
              + " stacks of up to "
              + most
              + ", more than "
              + MOST_STACKS_TRIED
              + "; allow fewer leaves to a stack");
    }
    List<BigDecimal> leaves = leavesMm.stream().map(BigDecimal::valueOf).toList();
    return new StackSearch(leaves, BigDecimal.valueOf(gapMm), most, count).nearest();
  }

  private BigInteger stacksOfUpTo(int most) {
    BigInteger ofThisMany = BigInteger.ONE;
    BigInteger all = BigInteger.ZERO;
    for (int k = 1; k <= most; k++) {
      ofThisMany =
          ofThisMany
              .multiply(BigInteger.valueOf(leavesMm.size() - k + 1L))
              .divide(BigInteger.valueOf(k));
      all = all.add(ofThisMany);
    }
    return all;
  }
}
