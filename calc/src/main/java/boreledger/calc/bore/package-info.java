/**
 * Bores: from gauge readings to diameters at 20 degrees Celsius with their uncertainty, sections,
 * profiles, taper, out-of-round and perimeters.
 *
 * <p>Lengths are millimetres, temperatures degrees Celsius, expansion coefficients per kelvin,
 * times seconds, depths count from the deck downward. All types are immutable and safe between
 * threads; no argument may be null unless its own text says so. A value that cannot be is refused
 * with {@link boreledger.calc.input.ImpossibleInput}.
 *
 * <p>What a gauge with two contact points cannot see: an odd number of lobes at all; four lobes,
 * such as head bolts make, on two perpendicular axes; and an oval turned by some angle to the two
 * axes shows only the cosine of twice that angle of itself. Four axes 45 degrees apart show both.
 */
package boreledger.calc.bore;
