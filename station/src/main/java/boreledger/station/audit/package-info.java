/**
 * The audit: what a ledger file says is checked and computed again by somebody who believes none of
 * it.
 *
 * <p>A <em>finding</em> is something that an untouched ledger never has. A <em>notice</em> is worth
 * knowing and can be in honest ledgers too: a clock that was set back, a seal by an unknown key.
 */
package boreledger.station.audit;
