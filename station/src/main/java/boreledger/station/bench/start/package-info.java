/** The room where a person chooses the job, the gauge and what to gauge, and begins. */
package boreledger.station.bench.start;
