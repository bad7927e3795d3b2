/** The bench's sounds: one for go on, one for look at the screen. */
package boreledger.station.bench.tone;
