/**
 * Frames turned into values in millimetres. Whatever the bytes, there is an answer and no
 * exception.
 */
package boreledger.drivers.decoder;
