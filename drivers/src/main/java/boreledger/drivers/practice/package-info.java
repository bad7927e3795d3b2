/**
 * The practice gauge: a modelled hand with a modelled gauge in modelled bores, on a line like any
 * other. Nothing of it is shared with the computation that makes readings of rocking.
 */
package boreledger.drivers.practice;
