/** Lines over a network, such as to a serial device server. */
package boreledger.drivers.net;
