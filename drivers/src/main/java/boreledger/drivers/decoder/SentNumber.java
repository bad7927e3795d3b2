package boreledger.drivers.decoder;

import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.Set;

/**
 * The number that a frame holds, before it becomes millimetres.
 *
 * @param shown how messages show it
 * @param number the number in its unit
 * @param unit the unit that the frame's text names; null when it names none
 * @param flags the flags that the frame's text raises
 */
record SentNumber(String shown, BigDecimal number, LengthUnit unit, Set<Flag> flags) {}
