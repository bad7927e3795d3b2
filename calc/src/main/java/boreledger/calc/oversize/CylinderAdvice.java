package boreledger.calc.oversize;

/**
 * What a single cylinder needs, were it alone.
 *
 * @param cylinder its measurements
 * @param honing what honing would make of it, and why that will not do
 * @param oversizeMm the smallest oversize that cleans it up when the cut follows the worn bore;
 *     null when none does
 * @param oversizeOnOriginalCentreMm the smallest oversize that cleans it up on its original centre,
 *     worn on one side only; null when none does
 * @param finishedMm the diameter advised for it within the whole engine; null when there is none
 * @param clearanceMm the measured piston's clearance in that diameter, in millimetres, below zero
 *     when it would not go in; null without a piston or a diameter
 */
public record CylinderAdvice(
    WornCylinder cylinder,
    Honing honing,
    Double oversizeMm,
    Double oversizeOnOriginalCentreMm,
    Double finishedMm,
    Double clearanceMm) {}
