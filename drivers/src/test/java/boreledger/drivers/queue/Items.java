package boreledger.drivers.queue;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LengthUnit;

/** Queue items told apart by their time. */
final class Items {
  private Items() {}

  /** An item that must not be skipped. */
  static QueueItem kept(String gauge, double tS) {
    return new QueueItem.Said(gauge, new GaugeEvent.Bad(new Rejected(tS, Bytes.EMPTY, "junk")));
  }

  /** An item that may be skipped. */
  static QueueItem live(String gauge, double tS) {
    Sample sample = new Sample(tS, Bytes.EMPTY, 0.5, LengthUnit.MM, false);
    return new QueueItem.Said(gauge, new GaugeEvent.Live(sample));
  }
}
