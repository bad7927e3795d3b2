/**
 * What a ring's end gap should be, whether the bore lets it be so, and what is left to file.
 *
 * <p>Lengths are millimetres; all types are immutable and safe between threads; no argument may be
 * null unless its own text says so. The ring maker's data stand above every rule here.
 */
package boreledger.calc.gapping;
