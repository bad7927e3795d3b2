package boreledger.calc.rock;

/**
 * One pass of a rocked gauge through square.
 *
 * @param tS when, in seconds
 * @param valueMm the value there as its own samples have it, in millimetres
 * @param share the part it has in the reading, from 0 to 1; all of a reading add up to one
 */
public record RockVertex(double tS, double valueMm, double share) {}
