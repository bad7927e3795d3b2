/**
 * The bench's panes: each shows one property of the model and knows nothing of the others. All of
 * it belongs to the JavaFX thread. Colours stand in {@code bench.css} alone, by role; sizes there
 * are in em, so that one font size scales the whole window.
 */
package boreledger.station.bench.view;
