package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;

/**
 * A sample with the level around it.
 *
 * @param levelMm the median of the sample and its two neighbours, in millimetres: one wild sample
 *     does not move it
 */
record Leveled(Sample sample, double levelMm) {}
