package boreledger.drivers.learn;

import java.math.BigDecimal;

/**
 * What a number in a frame is worth.
 *
 * @param stepMm one count in millimetres; of frames in millimetres where some are in inches
 * @param stepIn one count in inches, of frames that say inch; null when none do
 * @param inch the bits that say inch; null when none do
 * @param exact whether every shown value is given exactly
 */
record Fit(BigDecimal stepMm, BigDecimal stepIn, Bits inch, boolean exact) {}
