package boreledger.drivers.learn;

/**
 * One reading of the bytes that fits everything shown.
 *
 * @param words what it is, for a person
 * @param profile the text of a profile that reads so
 */
public record Candidate(String words, String profile) {}
