/** The keys that a person, or a foot switch that types, gives commands with. */
package boreledger.station.bench.keys;
