package boreledger.station.audit;

/**
 * A correction that holds, other than taking a reading back.
 *
 * @param entry the correction's entry
 * @param corrects the entry that it corrects: a reading's, or the opening of a session
 * @param what one plain sentence that tells what was before and what is now
 * @param who the person; null when not known
 * @param wall the clock on the wall when it was said
 */
public record CorrectedEntry(
    long entry, long corrects, String what, String why, String who, String wall) {}
