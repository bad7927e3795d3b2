package boreledger.calc.rock;

/**
 * One pass of a rocked gauge through square.
 *
 * @param tS when, in seconds
 * @param valueMm the value there as its own samples have it, in millimetres
 * @param standardUncertaintyMm the standard uncertainty of that value alone, in millimetres
 */
public record RockVertex(double tS, double valueMm, double standardUncertaintyMm) {}
