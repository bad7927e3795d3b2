/** The room that shows what the bores are like and what to do about them. */
package boreledger.station.bench.bores;
