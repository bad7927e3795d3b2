package boreledger.station.audit;

/**
 * A finding or a notice.
 *
 * @param entry the entry it is about; null for the file as a whole
 * @param what one plain sentence without its full stop
 */
public record Remark(Long entry, String what) {}
