package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LengthUnit;

/**
 * One decoded value, such as +0.0130 mm.
 *
 * @param valueMm the gauge's own value in millimetres: a deviation or a size, as its profile says;
 *     finite
 * @param unit the unit the frame was sent in; an inch value has been converted exactly
 * @param unitSent whether the frame itself named the unit, rather than its profile
 */
public record Sample(double tS, Bytes raw, double valueMm, LengthUnit unit, boolean unitSent)
    implements Decoded {}
