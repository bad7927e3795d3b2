/**
 * Deciding whether a measured value keeps a limit, as ISO 14253-1 and JCGM 106 have it. Lengths in
 * millimetres; all types are immutable; no argument may be null.
 */
package boreledger.calc.decision;
