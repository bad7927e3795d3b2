package boreledger.station.session;

import boreledger.drivers.pick.PickEvent;

/**
 * What made a session take back, restore or skip: a press of the gauge as a gesture, or a word from
 * elsewhere.
 *
 * @param tS the session's clock
 * @param why in one plain clause
 * @param raw what the gauge sent, in hexadecimal; null when it was no gesture of the gauge
 * @param valueMm the gesture's value; null when it was no gesture of the gauge
 */
record Prompt(double tS, String why, String raw, Double valueMm) {
  /** A gesture of the gauge. */
  static Prompt pressed(PickEvent.Picked gesture, String why) {
    String raw = SessionEntries.raw(gesture.samples()).toHex();
    return new Prompt(gesture.tS(), why, raw, gesture.valueMm());
  }

  /** Asked for in another way than by the gauge. */
  static Prompt said(double tS, String why) {
    return new Prompt(tS, why, null, null);
  }
}
