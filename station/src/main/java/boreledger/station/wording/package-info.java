/**
 * How results are put into words: what is meant is told by a {@link
 * boreledger.station.wording.Statement}, and only where it is shown does it become a sentence, in
 * the language and the unit of that place.
 */
package boreledger.station.wording;
