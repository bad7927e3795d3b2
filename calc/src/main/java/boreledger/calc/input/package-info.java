/** Refusal of values that cannot be, in one line that says what, how much and what would do. */
package boreledger.calc.input;
