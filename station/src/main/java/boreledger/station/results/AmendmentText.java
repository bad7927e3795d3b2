package boreledger.station.results;

import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.session.Said;
import boreledger.station.session.StoredSession.Amendment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A correction of what a session was opened with, in words: what it was, what it is, and why. */
public final class AmendmentText {
  private static final int SHORT_HASH = 12;

  private AmendmentText() {}

  /** What was changed, in one sentence. */
  public static String what(long session, Amendment amendment) {
    return told(session, amendment) + ".";
  }

  /** The same with reason, person and time. */
  static String of(long session, Amendment amendment) {
    Amended amended = amendment.amended();
    return String.format(
        "%s (entry %d): %s.",
        told(session, amendment),
        amendment.seq(),
        new Said(amended.why(), amended.who(), amended.wall()).words());
  }

  private static String told(long session, Amendment amendment) {
    Amended amended = amendment.amended();
    List<String> changes = new ArrayList<>();
    temperature(
        "the setting ring", amendment.before().settingTempC(), amended.settingTempC(), changes);
    temperature("the block", amendment.before().blockTempC(), amended.blockTempC(), changes);
    if (amended.job() != null) {
      changes.add(
          "the job file "
              + brief(amended.job())
              + "… holds instead of "
              + brief(amendment.jobBefore())
              + "…");
    }
    return String.format(
        Locale.ROOT,
        "Session %d was amended%s: %s",
        session,
        amended.tS() > 0 ? String.format(Locale.ROOT, " from %.0f s on", amended.tS()) : "",
        String.join(", ", changes));
  }

  private static void temperature(String whose, Double wasC, Double isC, List<String> changes) {
    if (isC != null) {
      String was = wasC == null ? "one that was not taken" : wasC + " °C";
      changes.add(whose + " had " + isC + " °C, not " + was);
    }
  }

  private static String brief(String sha256) {
    return sha256.substring(0, Math.min(SHORT_HASH, sha256.length()));
  }
}
