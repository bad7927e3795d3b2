/** What was found out about the job, for the rooms that show it. */
package boreledger.station.bench.findings;
