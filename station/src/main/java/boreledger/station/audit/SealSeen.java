package boreledger.station.audit;

/**
 * A seal that the audit met.
 *
 * @param from where it was found: {@code entry 52}, or a file
 * @param entry the last entry that it covers
 * @param entriesAfter how many entries came later
 * @param key the public key, in base64url
 * @param known whether the key is one that was named, or one's own
 * @param holds whether the signature is right and the ledger is what was sealed
 */
public record SealSeen(
    String from,
    String name,
    String time,
    long entry,
    long entriesAfter,
    String key,
    boolean known,
    boolean holds) {}
