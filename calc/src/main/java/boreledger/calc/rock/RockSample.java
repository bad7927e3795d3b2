package boreledger.calc.rock;

/**
 * One value read while a gauge is rocked.
 *
 * @param tS time in seconds; samples of one record run forward, unevenly if need be
 * @param valueMm the gauge's own value in millimetres, deviation or size
 */
public record RockSample(double tS, double valueMm) {}
