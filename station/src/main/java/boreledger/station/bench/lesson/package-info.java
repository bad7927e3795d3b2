/**
 * Teaching the station a gauge that no profile fits: values shown, bytes seen, a profile written.
 */
package boreledger.station.bench.lesson;
