/** Fitting lines to pairs of numbers. Plain numbers in the caller's units; immutable types. */
package boreledger.calc.fit;
