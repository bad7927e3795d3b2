/**
 * Drawings of bores and gaps that know neither screen nor paper: immutable figures made from
 * results, drawn with a {@link boreledger.station.drawing.Pen}.
 *
 * <p>Figures keep millimetres and convert when they draw. A pen's coordinates are points (or any
 * other unit) from the upper left corner, y downward. Nothing is told by colour alone: axes differ
 * by line and marker, states by word and outline.
 */
package boreledger.station.drawing;
