package boreledger.station.results;

import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.session.Said;
import boreledger.station.session.StoredSession.Amendment;
import boreledger.station.wording.Part;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Part.Ratio;
import boreledger.station.wording.Part.Several;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;

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
    String said = new Said(amended.why(), amended.who(), amended.wall()).words();
    return Phrase.AMENDED_BECAUSE.of(
        told(session, amendment), Name.of(amendment.seq()), new Name(said));
  }

  private static Statement told(long session, Amendment amendment) {
    Amended amended = amendment.amended();
    List<Part> changes = new ArrayList<>();
    if (amended.settingTempC() != null) {
      Double wasC = amendment.before().settingTempC();
      changes.add(Phrase.SETTING_HAD.of(degrees(amended.settingTempC()), was(wasC)));
    }
    if (amended.blockTempC() != null) {
      Double wasC = amendment.before().blockTempC();
      changes.add(Phrase.BLOCK_HAD.of(degrees(amended.blockTempC()), was(wasC)));
    }
    if (amended.job() != null) {
      changes.add(Phrase.JOB_FILE_HOLDS.of(brief(amended.job()), brief(amendment.jobBefore())));
    }
    Name number = Name.of(session);
    return amended.tS() > 0
        ? Phrase.SESSION_AMENDED_FROM.of(number, new Ratio(amended.tS(), 0), new Several(changes))
        : Phrase.SESSION_AMENDED.of(number, new Several(changes));
  }

  private static Part was(Double wasC) {
    return wasC == null ? Phrase.TEMPERATURE_UNTAKEN.of() : degrees(wasC);
  }

  private static Name degrees(double tempC) {
    return new Name(tempC + " °C");
  }

  private static Name brief(String sha256) {
    return new Name(sha256.substring(0, Math.min(SHORT_HASH, sha256.length())) + "…");
  }
}
