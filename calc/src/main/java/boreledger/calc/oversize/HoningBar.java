package boreledger.calc.oversize;

/**
 * Why a cylinder cannot be made good by honing alone.
 *
 * @param why the rule it breaks
 * @param valueMm what it comes to, in millimetres
 * @param limitMm what is allowed
 */
public record HoningBar(Why why, double valueMm, double limitMm) {
  /** The rules of honing. */
  public enum Why {
    /** The largest diameter is above the wear limit. */
    ABOVE_WEAR_LIMIT,
    /** More stock would have to come off than honing can take. */
    TOO_MUCH_STOCK,
    /** The honed bore would be above the largest bore allowed. */
    ABOVE_LARGEST_BORE,
    /** The piston would have more clearance than allowed. */
    TOO_MUCH_CLEARANCE
  }
}
