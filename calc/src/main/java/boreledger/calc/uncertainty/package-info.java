/**
 * Uncertainty as JCGM 100:2008 (the GUM) has it: components, their budget, degrees of freedom and
 * coverage.
 *
 * <p>Standard uncertainties are in millimetres and already multiplied by their sensitivity, so they
 * add in squares. Degrees of freedom may be {@link Double#POSITIVE_INFINITY}. All types are
 * immutable and safe between threads; no argument may be null unless its own text says so.
 */
package boreledger.calc.uncertainty;
