/**
 * Which ring goes in which bore, so that the most bores get a ring and the least is filed away.
 *
 * <p>Lengths are millimetres at 20 degrees Celsius. They are compared in whole picometres, so that
 * two sums that are equal on paper are equal here. All types are immutable and safe between
 * threads; no argument may be null unless its own text says so. A value that cannot be is refused
 * with {@link boreledger.calc.input.ImpossibleInput}.
 */
package boreledger.calc.match;
