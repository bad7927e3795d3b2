package boreledger.station.app;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Sealed;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.seal.Seal;
import boreledger.station.seal.Seal.NoSeal;
import java.util.List;

/** A ledger's last seal in words, to be printed. */
final class SealWords {
  private SealWords() {}

  /** The words; null when the ledger was never sealed. */
  static String of(LedgerView view) throws LedgerFault {
    List<Entry> seals = view.seals();
    if (seals.isEmpty()) {
      return null;
    }
    Entry last = seals.get(seals.size() - 1);
    Sealed kept = (Sealed) last.body();
    String who = "entry " + last.seq() + ", up to entry " + kept.entry() + ", by " + kept.name();
    try {
      Seal seal = Seal.of(kept);
      return seal.isGenuine()
          ? who + "; " + seal.line()
          : who + "; ITS SIGNATURE IS NOT RIGHT, see boreledger audit";
    } catch (NoSeal e) {
      return who + "; IT CANNOT BE READ (" + e.getMessage() + "), see boreledger audit";
    }
  }
}
