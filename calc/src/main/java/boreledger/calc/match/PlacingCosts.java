package boreledger.calc.match;

import java.math.BigInteger;
import java.util.function.ToLongFunction;

/**
 * What each placing costs, as one whole number whose digits are, from the highest: 1 for a bore
 * without ring, the removal, the excess over the target, the place in the listed order. Each digit
 * has room for its sum over all bores, so comparing two sums compares them digit by digit and a
 * later digit decides only when all earlier ones are equal.
 */
final class PlacingCosts {
  private final Placing[][] placings;
  private final int rings;
  private final BigInteger removeBase;
  private final BigInteger excessBase;
  private final BigInteger orderBase;

  /**
   * Costs of all placings.
   *
   * @param placings by bore, then by ring
   */
  PlacingCosts(Placing[][] placings) {
    this.placings = placings;
    rings = placings[0].length;
    removeBase = room(Placing::removePm);
    excessBase = room(Placing::excessPm);
    orderBase = orderWeight(-1);
  }

  /**
   * Costs by bore; a column for each ring and then one for each bore that stands for no ring. Null
   * where the gap is too wide.
   */
  BigInteger[][] matrix() {
    int bores = placings.length;
    BigInteger[][] costs = new BigInteger[bores][rings + bores];
    for (int bore = 0; bore < bores; bore++) {
      for (int ring = 0; ring < rings; ring++) {
        Placing placing = placings[bore][ring];
        costs[bore][ring] =
            placing.allowed()
                ? pack(0, placing.removePm(), placing.excessPm(), order(bore, ring))
                : null;
      }
      costs[bore][rings + bore] = pack(1, 0, 0, order(bore, rings));
    }
    return costs;
  }

  private BigInteger pack(long empty, long removePm, long excessPm, BigInteger order) {
    return BigInteger.valueOf(empty)
        .multiply(removeBase)
        .add(BigInteger.valueOf(removePm))
        .multiply(excessBase)
        .add(BigInteger.valueOf(excessPm))
        .multiply(orderBase)
        .add(order);
  }

  private BigInteger order(int bore, int ring) {
    return orderWeight(bore).multiply(BigInteger.valueOf(ring));
  }

  /** An earlier bore's choice outweighs all later ones. */
  private BigInteger orderWeight(int bore) {
    return BigInteger.valueOf(rings + 1L).pow(placings.length - 1 - bore);
  }

  private BigInteger room(ToLongFunction<Placing> term) {
    BigInteger room = BigInteger.ONE;
    for (Placing[] ofBore : placings) {
      long most = 0;
      for (Placing placing : ofBore) {
        most = Math.max(most, term.applyAsLong(placing));
      }
      room = room.add(BigInteger.valueOf(most));
    }
    return room;
  }
}
