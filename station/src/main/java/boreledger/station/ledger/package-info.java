/**
 * The ledger: one SQLite file to which entries are only ever added.
 *
 * <h2>The file</h2>
 *
 * One table, {@code entry(seq, body, hash)}. {@code seq} counts 1, 2, 3, … without gaps. {@code
 * body} is one JSON object in UTF-8, stored and hashed exactly as it was written. {@code hash} has
 * 32 bytes. The columns {@code kind} and {@code session} are computed from the body whenever they
 * are asked for and are never stored. Triggers refuse UPDATE, DELETE and any {@code seq} but the
 * next one.
 *
 * <h2>The bytes that are hashed</h2>
 *
 * With {@code ||} for joining bytes, and SHA-256 as FIPS 180-4 defines it:
 *
 * <pre>
 *   digest(n) = SHA-256( 00 || UTF-8 bytes of body(n) )
 *   hash(n)   = SHA-256( 01 || hash(n-1) || n as 8 bytes, most significant first || digest(n) )
 *   hash(0)   = 32 bytes of zero
 * </pre>
 *
 * The two different first bytes keep a body from posing as a link. The ledger's head is the last
 * entry's hash. A chain shows every change inside it; that the tail was cut off, or everything
 * written anew, shows only against a head kept elsewhere.
 *
 * <h2>Entries of other ledgers</h2>
 *
 * An entry of the kind {@code imported} names another ledger's id, the first number that follows,
 * how many follow, and the hash of the last one. Right after it stands one {@code imported-entry}
 * for each, with the other ledger's number, hash and body. These three follow the rule above by
 * themselves, from that ledger's first entry on, over as many imports as there were. {@code
 * session} in the wrapping is the number that the session's opening has in this ledger.
 *
 * <h2>Durability</h2>
 *
 * Write-ahead log with {@code synchronous=FULL}: when {@link
 * boreledger.station.ledger.Ledger#append} returns, the entries have been synchronised to the disk.
 * One thread writes; everybody else reads through {@link boreledger.station.ledger.LedgerView}, a
 * read-only connection.
 */
package boreledger.station.ledger;
