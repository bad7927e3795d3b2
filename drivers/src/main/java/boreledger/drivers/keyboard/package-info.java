/**
 * Gauges that type as a keyboard does: told from a person by how fast they type, and made a line
 * like any other.
 */
package boreledger.drivers.keyboard;
