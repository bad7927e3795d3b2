/**
 * A job while a person fills it in: the plain text of each field, how it is written as a job file,
 * and what the reader of job files says about it. What is valid is decided by {@link
 * boreledger.station.job.JobFiles} alone; here its words are brought back to the field they mean.
 *
 * <p>No argument or answer is null unless it says so. Nothing here knows a screen.
 */
package boreledger.station.job.draft;
