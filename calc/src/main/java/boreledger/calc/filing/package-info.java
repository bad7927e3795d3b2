/**
 * Filing a ring's gap to its target: what a turn of the file takes off, and how many turns may
 * follow before the gap is to be read again. A gap cannot be filed smaller, so the advice keeps
 * short of the target's tolerance and of the maker's largest gap.
 *
 * <p>Lengths are millimetres. All types are immutable and safe between threads; no argument may be
 * null unless its own text says so. A value that cannot be is refused with {@link
 * boreledger.calc.input.ImpossibleInput}.
 */
package boreledger.calc.filing;
