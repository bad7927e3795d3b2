package boreledger.station.drawing;

import boreledger.station.wording.Phrase;

/**
 * A value of the length axis that is drawn across the whole chart, such as a limit.
 *
 * @param what such as {@link Phrase#FIGURE_WEAR_LIMIT}
 * @param mm the value in millimetres
 */
public record ValueMark(Phrase what, double mm, Stroke stroke) {}
