package boreledger.station.session;

import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.session.StoredSession.Stint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A session's temperatures as they are told. What is said of an earlier moment carries on over
 * later ones that said nothing of their own; of two that are said of one moment the later one
 * holds.
 */
public final class Stints {
  private final List<Stint> said = new ArrayList<>();

  /** Those that a session was opened with. */
  public Stints(SessionOpened opened) {
    from(0, opened.settingTempC(), opened.blockTempC());
  }

  /** From a moment on; null for a temperature that stays. */
  public void from(double tS, Double settingTempC, Double blockTempC) {
    said.add(new Stint(tS, settingTempC, blockTempC));
  }

  /** The stretches, earliest first, never empty. */
  public List<Stint> list() {
    List<Stint> inTime = new ArrayList<>(said);
    inTime.sort(Comparator.comparingDouble(Stint::fromTS));
    List<Stint> stretches = new ArrayList<>();
    Stint before = new Stint(0, null, null);
    for (Stint each : inTime) {
      before = before.from(each.fromTS(), each.settingTempC(), each.blockTempC());
      int last = stretches.size() - 1;
      if (last >= 0 && stretches.get(last).fromTS() == before.fromTS()) {
        stretches.set(last, before);
      } else {
        stretches.add(before);
      }
    }
    return stretches;
  }

  /** The stretch in which a moment lies. */
  public Stint at(double tS) {
    return StoredSession.stintAt(list(), tS);
  }
}
