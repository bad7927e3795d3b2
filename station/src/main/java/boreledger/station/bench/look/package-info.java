/** What all rooms of the window are made of: labels, signs, switches, drawings, the rail. */
package boreledger.station.bench.look;
