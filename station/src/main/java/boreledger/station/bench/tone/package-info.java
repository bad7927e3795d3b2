/** The bench's sounds: go on, taken back, look at the screen. */
package boreledger.station.bench.tone;
