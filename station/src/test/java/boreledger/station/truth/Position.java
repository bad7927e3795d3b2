package boreledger.station.truth;

/** One place in the engine to gauge: cylinder counted from 1, depth below the deck, axis. */
public record Position(int cylinder, double depthMm, Axis axis) {}
