/** The window: the rail, the rooms, the keys, and what is remembered from one start to the next. */
package boreledger.station.bench.window;
