/** The bench window and how the rest of the program opens it. */
package boreledger.station.bench;
