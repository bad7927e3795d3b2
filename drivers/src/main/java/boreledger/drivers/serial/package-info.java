/** Serial ports. Only this package knows the serial library. */
package boreledger.drivers.serial;
