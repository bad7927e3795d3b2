package boreledger.station.session;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.station.ledger.EntryBody.Chosen;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.plan.Position;
import java.util.List;

/**
 * What is said in one session, as ledger entries.
 *
 * @param id the session
 * @param rule the pick rule of its readings
 */
record SessionEntries(long id, WallClock wall, String rule) {
  /**
   * A reading.
   *
   * @param setting the entry of the setting ring reading in force; null where there is none
   */
  ReadingTaken reading(
      Position position, PickEvent.Picked picked, Long setting, List<String> cautions) {
    return new ReadingTaken(
        id,
        position,
        picked.tS(),
        wall.at(picked.tS()),
        picked.valueMm(),
        picked.standardUncertaintyMm(),
        rule,
        setting,
        picked.samples().stream()
            .map(sample -> new KeptSample(sample.tS(), sample.raw().toHex(), sample.valueMm()))
            .toList(),
        cautions);
  }

  SampleRefused refused(double tS, Bytes raw, Double valueMm, String why) {
    return new SampleRefused(id, tS, wall.at(tS), raw.toHex(), valueMm, why);
  }

  LineBroke lineBroke(double tS, String why) {
    return new LineBroke(id, tS, wall.at(tS), why);
  }

  SessionEnded ended(double tS) {
    return new SessionEnded(id, tS, wall.at(tS));
  }

  TakenBack takenBack(long entry, Prompt by) {
    return new TakenBack(
        id, entry, by.tS(), wall.at(by.tS()), by.why(), null, by.raw(), by.valueMm());
  }

  Restored restored(long entry, Prompt by) {
    return new Restored(
        id, entry, by.tS(), wall.at(by.tS()), by.why(), null, by.raw(), by.valueMm());
  }

  Chosen chosen(Position next, Prompt by) {
    return new Chosen(id, next, by.tS(), wall.at(by.tS()), by.why(), null, by.raw(), by.valueMm());
  }

  /** The bytes of some samples, one after the other. */
  static Bytes raw(List<Sample> samples) {
    return samples.stream().map(Sample::raw).reduce(Bytes.EMPTY, Bytes::plus);
  }
}
