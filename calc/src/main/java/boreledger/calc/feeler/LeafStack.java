package boreledger.calc.feeler;

import java.util.List;

/**
 * Leaves laid on each other, such as 0.20 and 0.30 mm for a gap of 0.52 mm.
 *
 * @param leavesMm their thicknesses in millimetres, thinnest first
 * @param totalMm their sum
 * @param offMm sum less gap; above zero when the stack is thicker than the gap
 */
public record LeafStack(List<Double> leavesMm, double totalMm, double offMm) {
  /** Takes a copy of the list. */
  public LeafStack {
    leavesMm = List.copyOf(leavesMm);
  }
}
