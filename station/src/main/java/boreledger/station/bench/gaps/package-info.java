/** The room that shows how ring gaps go with their bores and what to file. */
package boreledger.station.bench.gaps;
