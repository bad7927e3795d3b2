package boreledger.drivers.profile;

import java.math.BigDecimal;

/**
 * How the bytes of a number become a value. Bits that {@code negative}, {@code decimalPosition} or
 * the profile's unit bits name are no part of the number, even if they stand among its bytes.
 *
 * @param coding how the number stands in the bytes
 * @param scale what one count is worth in the value's unit; not 0
 * @param inchScale what one count is worth in inches when the frame itself says inch; not 0
 * @param decimalPosition the bits that say how many digits stand after the point; null when {@code
 *     scale} alone says it
 * @param negative the bits that say that the number is negative; null when it says so itself
 */
public record BinaryNumber(
    NumberCoding coding,
    BigDecimal scale,
    BigDecimal inchScale,
    BitField decimalPosition,
    BitTest negative) {}
