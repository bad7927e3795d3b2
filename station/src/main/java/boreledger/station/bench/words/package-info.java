/** Every word and number that the window shows. */
package boreledger.station.bench.words;
