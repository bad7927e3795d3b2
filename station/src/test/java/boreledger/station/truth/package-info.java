/**
 * An independent model of an engine on the bench: bores, rings, temperatures, a drifting gauge. It
 * makes capture files and says what each must give, along another route than the program's own, and
 * uses nothing of the program.
 *
 * <p>Lengths are millimetres at 20 °C unless a name says otherwise, temperatures degrees Celsius,
 * times seconds since the start of a capture. Depths count from the deck down. Sines and noise come
 * from {@link StrictMath} and {@link java.util.Random}, so that every machine makes the same bytes.
 */
package boreledger.station.truth;
