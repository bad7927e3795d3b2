/**
 * Gauge studies: repeatability and reproducibility of a crossed study, bias and linearity against
 * reference values, stability on a control chart, and the statistics under them.
 *
 * <p>Values are plain numbers; results are in the unit of the readings, and a tolerance or
 * reference value must be given in it too. Standard deviations are never multiplied by a coverage
 * factor unless the text says so. All types are immutable and safe between threads; no argument may
 * be null unless its own text says so. Input that cannot be judged is refused with {@link
 * boreledger.calc.input.ImpossibleInput}; a figure that the readings cannot give is an empty
 * optional or a documented null, never NaN.
 */
package boreledger.calc.study;
