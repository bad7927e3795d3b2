/** Samples made into readings: press, settle, rock. Lengths are millimetres, times seconds. */
package boreledger.drivers.pick;
