/** Foot switches on a line of their own: each whole line that they send is one press. */
package boreledger.drivers.footswitch;
