/** A gauge on its line: framer, decoder and pick rule in a row. */
package boreledger.drivers.gauge;
