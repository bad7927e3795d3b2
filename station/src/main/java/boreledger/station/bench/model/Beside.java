package boreledger.station.bench.model;

/**
 * A further gauge of the run.
 *
 * @param troubled whether the words tell of something wrong
 * @param words such as {@code Beside: Ring depths, top ring: 3 of 12, last 15.4120 mm}
 */
public record Beside(boolean troubled, String words) {}
