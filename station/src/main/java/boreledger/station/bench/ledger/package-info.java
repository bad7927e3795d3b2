/**
 * The room of the ledger: its sessions, a session's readings, a reading down to its bytes, the
 * audit, the seal and the build sheet. Models have no scene nodes in them.
 */
package boreledger.station.bench.ledger;
