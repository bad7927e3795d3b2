/**
 * Keeping a ledger and handing it on: exports, imports, backups and what is restored from them.
 *
 * <p>Whatever is written here appears whole or not at all, and nothing that stands already is
 * overwritten unless that was asked for. Work that may take long tells a {@link
 * boreledger.station.keeping.Progress} how far it is, which may stop it.
 */
package boreledger.station.keeping;
