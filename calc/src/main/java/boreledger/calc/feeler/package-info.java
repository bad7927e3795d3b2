/**
 * Feeler leaves: which of a set make up a gap, and how well a leaf that goes and one that does not
 * tell it.
 *
 * <p>Lengths are millimetres, added as the decimals they are written as. All types are immutable
 * and safe between threads; no argument may be null unless its own text says so. A value that
 * cannot be is refused with {@link boreledger.calc.input.ImpossibleInput}.
 */
package boreledger.calc.feeler;
