/** Recorded byte streams: their files, and how they are played as a line. */
package boreledger.drivers.capture;
