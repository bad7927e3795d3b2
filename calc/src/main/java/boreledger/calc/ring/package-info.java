/**
 * Piston rings in a bore: how the end gap follows the bore's perimeter, whether gap readings agree
 * with it, and what a ring that is not square does to a reading.
 *
 * <p>Lengths are millimetres, temperatures degrees Celsius, expansion coefficients per kelvin,
 * depths count from the deck downward. All types are immutable and safe between threads; no
 * argument may be null unless its own text says so. A value that cannot be is refused with {@link
 * boreledger.calc.input.ImpossibleInput}.
 */
package boreledger.calc.ring;
