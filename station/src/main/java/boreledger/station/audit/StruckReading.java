package boreledger.station.audit;

/**
 * A reading that was taken back and does not count.
 *
 * @param entry the reading's entry
 * @param position where it was taken, in words
 * @param by the entry that took it back
 * @param who the person; null when not known
 */
public record StruckReading(
    long entry, String position, double valueMm, long by, String why, String who) {}
