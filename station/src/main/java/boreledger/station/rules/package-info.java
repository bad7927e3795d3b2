/**
 * The rules by which the program computed what stands in ledgers, version by version, for whoever
 * checks an old ledger. What a version changed is added here and never taken away.
 */
package boreledger.station.rules;
