package boreledger.station.results;

import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.session.Said;
import boreledger.station.session.StoredSession.Amendment;
import boreledger.station.wording.Part;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A correction of what a session was opened with: what it was, what it is, and why. */
public final class AmendmentText {
  private static final int SHORT_HASH = 12;

  private AmendmentText() {}

  /** What was changed, in one plain sentence. */
  public static String what(long session, Amendment amendment) {
    return Wording.PLAIN.of(told(session, amendment)) + ".";
  }

  /** The same with reason, person and time. */
  static Statement of(long session, Amendment amendment) {
    Amended amended = amendment.amended();
    return Phrase.SESSION_AMENDED_WHY.of(
        told(session, amendment),
        Name.of(amendment.seq()),
        new Name(new Said(amended.why(), amended.who(), amended.wall()).words()));
  }

  private static Statement told(long session, Amendment amendment) {
    Amended amended = amendment.amended();
    List<Part> changes = new ArrayList<>();
    if (amended.settingTempC() != null) {
      Double wasC = amendment.before().settingTempC();
      changes.add(
          wasC == null
              ? Phrase.SETTING_TEMPERATURE_ADDED.of(degrees(amended.settingTempC()))
              : Phrase.SETTING_TEMPERATURE_AMENDED.of(
                  degrees(amended.settingTempC()), degrees(wasC)));
    }
    if (amended.blockTempC() != null) {
      Double wasC = amendment.before().blockTempC();
      changes.add(
          wasC == null
              ? Phrase.BLOCK_TEMPERATURE_ADDED.of(degrees(amended.blockTempC()))
              : Phrase.BLOCK_TEMPERATURE_AMENDED.of(degrees(amended.blockTempC()), degrees(wasC)));
    }
    if (amended.job() != null) {
      changes.add(Phrase.JOB_AMENDED.of(brief(amended.job()), brief(amendment.jobBefore())));
    }
    Part.Several all = new Part.Several(changes);
    return amended.tS() > 0
        ? Phrase.SESSION_AMENDED_FROM.of(
            Name.of(session), new Name(String.format(Locale.ROOT, "%.0f", amended.tS())), all)
        : Phrase.SESSION_AMENDED.of(Name.of(session), all);
  }

  private static Name degrees(Double temperatureC) {
    return new Name(temperatureC.toString());
  }

  private static Name brief(String sha256) {
    return new Name(sha256.substring(0, Math.min(SHORT_HASH, sha256.length())) + "…");
  }
}
