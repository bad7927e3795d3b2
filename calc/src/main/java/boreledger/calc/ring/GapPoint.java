package boreledger.calc.ring;

import boreledger.calc.bore.Reach;

/**
 * A ring's gap at one depth of its travel.
 *
 * @param depthMm below the deck in millimetres
 * @param gapMm the gap in millimetres; below zero when the ends butt
 * @param cautiousGapMm the smallest it may reasonably be: below the deepest bore reading the bore
 *     may go on narrowing; elsewhere the same as {@code gapMm}
 * @param reach where the depth lies against the bore readings
 */
public record GapPoint(double depthMm, double gapMm, double cautiousGapMm, Reach reach) {}
