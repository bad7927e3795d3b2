/** Where bytes come from, and what a line says. Times are seconds on the line's clock. */
package boreledger.drivers.line;
