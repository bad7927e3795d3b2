/**
 * What the bench shows, in words and numbers ready to be drawn, without any screen.
 *
 * <p>Everything here but {@link boreledger.station.bench.model.BenchModel#accept} is used on one
 * thread, the screen's. Records are immutable; null stands only where a component says so. Lengths
 * are millimetres until they become text.
 */
package boreledger.station.bench.model;
