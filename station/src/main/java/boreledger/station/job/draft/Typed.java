package boreledger.station.job.draft;

import java.math.BigDecimal;
import java.util.List;

/**
 * What a typed text of numbers means.
 *
 * @param numbers in the file's unit, exactly; empty when nothing was typed or it is not understood
 * @param fault why it is not understood; null when it is
 * @param hasUnit whether a unit was typed
 */
public record Typed(List<BigDecimal> numbers, Fault fault, boolean hasUnit) {
  /** Takes a copy of the list. */
  public Typed {
    numbers = List.copyOf(numbers);
  }

  static Typed not(Fault fault) {
    return new Typed(List.of(), fault, false);
  }

  /** Whether it is understood. */
  public boolean isUnderstood() {
    return fault == null;
  }
}
