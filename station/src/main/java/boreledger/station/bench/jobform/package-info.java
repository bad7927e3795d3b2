/**
 * A job made or changed in forms. The draft and what is wrong with it come from {@link
 * boreledger.station.job.draft}; here it gets words, fields and keys. Everything belongs to the
 * JavaFX thread; colours and sizes stand in {@code bench.css}.
 */
package boreledger.station.bench.jobform;
