package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;

/**
 * A frame, or damaged bytes, that gave no value.
 *
 * @param why one plain clause that says what was found and what was expected
 */
public record Rejected(double tS, Bytes raw, String why) implements Decoded {}
