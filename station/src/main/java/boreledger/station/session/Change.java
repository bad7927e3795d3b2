package boreledger.station.session;

import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.session.Correction.NotPossible;
import boreledger.station.session.StoredSession.Stint;
import java.util.Objects;

/**
 * What a session should have been opened with.
 *
 * @param fromTS the moment of its clock from which the temperatures hold, in seconds; 0 for all of
 *     it
 * @param settingTempC the setting ring's, in degrees Celsius; null when it stays
 * @param blockTempC the block's, in degrees Celsius; null when it stays
 * @param job the job file, with the session's own plan; null when it stays
 */
public record Change(double fromTS, Double settingTempC, Double blockTempC, Document job) {
  // What a capture file may say, too: nobody gauges colder or hotter than that.
  private static final double COLDEST_C = -40;
  private static final double WARMEST_C = 80;

  /** Whether a temperature in degrees Celsius is one that somebody gauges at; null is none. */
  public static boolean canBe(Double tempC) {
    return tempC == null || tempC >= COLDEST_C && tempC <= WARMEST_C;
  }

  void refuseUnlessItCanBe(StoredSession session) throws NotPossible {
    if (settingTempC == null && blockTempC == null && job == null) {
      throw new NotPossible("nothing to amend: name a temperature or a job");
    }
    refuseUnlessATemperature("setting ring", settingTempC);
    refuseUnlessATemperature("block", blockTempC);
    if (!(fromTS >= 0 && fromTS <= session.lastTS())) {
      throw new NotPossible(
          fromTS
              + " s is no moment of session "
              + session.id()
              + ", which ends at "
              + session.lastTS()
              + " s");
    }
    if (changesNothingIn(session)) {
      throw new NotPossible("session " + session.id() + " says just that already");
    }
  }

  private boolean changesNothingIn(StoredSession session) {
    Stint held = session.stintAt(fromTS);
    return (settingTempC == null || settingTempC.equals(held.settingTempC()))
        && (blockTempC == null || blockTempC.equals(held.blockTempC()))
        && (job == null || Objects.equals(job.sha256(), session.job()));
  }

  private static void refuseUnlessATemperature(String whose, Double tempC) throws NotPossible {
    if (!canBe(tempC)) {
      throw new NotPossible(
          "the "
              + whose
              + "'s temperature of "
              + tempC
              + " °C lies outside "
              + COLDEST_C
              + " … "
              + WARMEST_C
              + " °C");
    }
  }
}
