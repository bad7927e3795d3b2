/** The way from the threads that read lines to the one that writes. */
package boreledger.drivers.queue;
