package boreledger.station.bench.ledger;

import boreledger.station.app.OpenedSession;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.session.StoredSession.Amendment;
import boreledger.station.session.StoredSession.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A session in words: what it was opened with, what holds, and what was amended, by whom and why.
 */
public record SessionFacts(List<Fact> facts) {
  /** Takes a copy of the list. */
  public SessionFacts {
    facts = List.copyOf(facts);
  }

  static SessionFacts of(OpenedSession opened, Moments moments) {
    SessionOpened said = opened.session().opened();
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact(LedgerText.ABOUT_NUMBER.with(), Long.toString(opened.session().id())));
    facts.add(
        new Fact(
            LedgerText.ABOUT_OPENED.with(),
            LedgerText.ABOUT_AT.with(moments.minute(said.wall()), said.wall().toString())));
    facts.add(
        new Fact(
            LedgerText.ABOUT_OPENED_WITH.with(),
            temperatures(said.settingTempC(), said.blockTempC())));
    for (Stint stint : opened.session().stints()) {
      facts.add(
          new Fact(
              stint.fromTS() > 0
                  ? LedgerText.ABOUT_HOLDS_FROM.with(seconds(stint.fromTS()))
                  : LedgerText.ABOUT_HOLDS.with(),
              temperatures(stint.settingTempC(), stint.blockTempC())));
    }
    for (Amendment each : opened.session().amendments()) {
      facts.add(
          new Fact(
              LedgerText.ABOUT_AMENDED.with(Long.toString(each.seq())), amended(each, moments)));
    }
    facts.add(
        new Fact(
            LedgerText.FACT_GAUGE.with(),
            LedgerText.GAUGE.with(
                opened.gauge(), opened.gaugeFile(), ReadingFacts.grouped(said.gauge()))));
    return new SessionFacts(facts);
  }

  private static String amended(Amendment amendment, Moments moments) {
    Amended amended = amendment.amended();
    List<String> changes = new ArrayList<>();
    if (amended.settingTempC() != null) {
      changes.add(
          LedgerText.ABOUT_SETTING.with(
              temperature(amendment.before().settingTempC()), temperature(amended.settingTempC())));
    }
    if (amended.blockTempC() != null) {
      changes.add(
          LedgerText.ABOUT_BLOCK.with(
              temperature(amendment.before().blockTempC()), temperature(amended.blockTempC())));
    }
    if (amended.job() != null) {
      changes.add(
          LedgerText.ABOUT_JOB.with(
              ReadingFacts.grouped(amendment.jobBefore()), ReadingFacts.grouped(amended.job())));
    }
    if (amended.tS() > 0) {
      changes.add(LedgerText.ABOUT_FROM.with(seconds(amended.tS())));
    }
    return LedgerText.ABOUT_BECAUSE.with(
        String.join("; ", changes), amended.why(), amended.who(), moments.minute(amended.wall()));
  }

  private static String temperatures(Double settingTempC, Double blockTempC) {
    return LedgerText.TEMPERATURES.with(temperature(settingTempC), temperature(blockTempC));
  }

  private static String temperature(Double tempC) {
    return tempC == null
        ? LedgerText.TEMPERATURE_NONE.with()
        : LedgerText.TEMPERATURE.with(Lengths.plain(tempC));
  }

  private static String seconds(double tS) {
    return String.format(Locale.ROOT, "%.1f", tS);
  }
}
