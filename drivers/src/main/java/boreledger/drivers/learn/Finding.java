package boreledger.drivers.learn;

import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/**
 * A reading of the bytes that gives every shown value.
 *
 * @param words what it is, for a person
 * @param cut how frames are found
 * @param decode the lines of a profile's {@code [decode]} table
 * @param unit the unit of values that name none
 * @param stepMm the step of the gauge's last digit or count
 * @param check the check its frames carry; null when none was found
 * @param remarks what else a person should know of it
 * @param exact whether it gives the shown values exactly, rather than rounded
 * @param open what it leaves open
 */
record Finding(
    String words,
    Cut cut,
    List<String> decode,
    LengthUnit unit,
    BigDecimal stepMm,
    CheckFound check,
    List<String> remarks,
    boolean exact,
    Set<Open> open) {
  Finding {
    decode = List.copyOf(decode);
    remarks = List.copyOf(remarks);
    open = Set.copyOf(open);
  }
}
