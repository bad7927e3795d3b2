/**
 * Whether a worn engine is honed or bored to an oversize.
 *
 * <p>Lengths are millimetres on the diameter; all types are immutable and safe between threads; no
 * argument may be null unless its own text says so. The engine maker's data stand above every
 * advice here; before the largest oversize the remaining wall must be compared with them.
 */
package boreledger.calc.oversize;
