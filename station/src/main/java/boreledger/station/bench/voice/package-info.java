/** Sentences said aloud by whatever the system has for that. */
package boreledger.station.bench.voice;
