/** Bytes cut into frames. Every byte fed is in exactly one event; nothing here knows a port. */
package boreledger.drivers.framer;
