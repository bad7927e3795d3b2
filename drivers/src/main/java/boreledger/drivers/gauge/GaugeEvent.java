package boreledger.drivers.gauge;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.pick.PickEvent;

/**
 * What a gauge tells the station.
 *
 * <p>{@link Live} samples feed the display and may be skipped when the station is slow; every other
 * event must reach it.
 */
public sealed interface GaugeEvent {
  /** A sample, as soon as it is decoded. */
  record Live(Sample sample) implements GaugeEvent {}

  /** Bytes that gave no sample. */
  record Bad(Rejected rejected) implements GaugeEvent {}

  /** The pick rule's word: a value for a position, or why there is none. */
  record Picks(PickEvent pick) implements GaugeEvent {}
}
