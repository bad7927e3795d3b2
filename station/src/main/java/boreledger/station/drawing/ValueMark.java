package boreledger.station.drawing;

/**
 * A value of the length axis that is drawn across the whole chart, such as a limit.
 *
 * @param words what it is, such as {@code wear limit}
 * @param mm the value in millimetres
 */
public record ValueMark(String words, double mm, Stroke stroke) {}
