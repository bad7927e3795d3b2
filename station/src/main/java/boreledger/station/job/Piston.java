package boreledger.station.job;

/** A measured piston: its diameter where its maker says to measure it. */
public record Piston(int cylinder, double diameterMm) {}
