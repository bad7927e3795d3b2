/** What the window remembers from one start to the next. */
package boreledger.station.bench.memory;
