package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;

/**
 * One entry as it stands in the ledger.
 *
 * @param seq its number, from 1
 * @param hash its link in the chain, 32 bytes
 */
public record Entry(long seq, EntryBody body, Bytes hash) {}
