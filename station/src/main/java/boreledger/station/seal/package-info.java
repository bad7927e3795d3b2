/**
 * Seals: a person's Ed25519 signature (RFC 8032) over a ledger's head, kept in the ledger and in a
 * small file elsewhere. A hash chain alone cannot show that its tail was cut off or that all of it
 * was written anew; a seal kept elsewhere can.
 *
 * <h2>The file</h2>
 *
 * UTF-8, eight lines, each ended by one line feed:
 *
 * <pre>
 *   boreledger-seal/1
 *   ledger    the ledger's id, 32 hexadecimal digits
 *   entry     the number of the last entry that is sealed
 *   head      that entry's hash, 64 hexadecimal digits
 *   time      when it was sealed, as 2031-05-06T08:00:00Z
 *   name      who sealed it
 *   key       the public key, 32 bytes in base64url without padding
 *   signature 64 bytes in base64url without padding
 * </pre>
 *
 * Word and value are parted by one space. Signed are the bytes of the first seven lines, line feeds
 * included.
 *
 * <h2>The line</h2>
 *
 * The same in one line, short enough for a square code on paper: the first line and the values of
 * {@code ledger}, {@code entry}, {@code head}, {@code time}, {@code key}, {@code signature} and, at
 * the end, {@code name}, parted by single spaces.
 */
package boreledger.station.seal;
