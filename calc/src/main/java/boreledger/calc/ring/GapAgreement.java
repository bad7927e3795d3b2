package boreledger.calc.ring;

import boreledger.calc.bore.Perimeter;

/**
 * A gap reading held against the bore.
 *
 * @param reading the reading, kept as read
 * @param perimeter the bore's perimeter at its depth
 * @param atReferenceMm the gap it would be at 20 degrees Celsius, in millimetres
 * @param expectedChangeMm how much the bore readings open the gap from the shallowest gauged depth
 *     to this one, at 20 degrees Celsius, in millimetres
 * @param expectation what the other readings say
 */
public record GapAgreement(
    GapReading reading,
    Perimeter perimeter,
    double atReferenceMm,
    double expectedChangeMm,
    Expectation expectation) {}
