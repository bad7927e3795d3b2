package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Told;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.job.DisplayUnit;
import boreledger.station.session.Outcome;
import boreledger.station.session.SessionStart;
import java.util.stream.Collectors;

/**
 * What a further gauge of the run has said, such as {@code ring-depth top}.
 *
 * @param name what the run calls the gauge
 * @param start its session; null until that was opened
 * @param progress how far its plan is; null until its session was opened
 * @param lastMm its last reading in millimetres; null before the first and after a take-back
 * @param shownMm what it showed last, in millimetres; null when nothing came yet
 * @param trouble what is wrong with it, in a plain sentence; empty when nothing is
 */
record BesideLine(
    String name,
    SessionStart start,
    Progress progress,
    Double lastMm,
    Double shownMm,
    String trouble) {
  static BesideLine of(String name) {
    return new BesideLine(name, null, null, null, null, "");
  }

  /** The same after one more event of this gauge. */
  BesideLine after(GaugingEvent event) {
    if (event instanceof GaugingEvent.Began began) {
      return new BesideLine(name, began.start(), began.progress(), lastMm, shownMm, trouble);
    } else if (event instanceof GaugingEvent.Live live) {
      return new BesideLine(name, start, progress, lastMm, live.sample().valueMm(), trouble);
    } else if (event instanceof GaugingEvent.Said said) {
      return at(said.progress()).said(said.outcome());
    } else if (event instanceof GaugingEvent.Noticed noticed) {
      return troubled(Told.recorded(noticed.what()));
    } else if (event instanceof GaugingEvent.LineGone gone) {
      return troubled(BenchText.NOTICE_LINE_GONE.with(Told.recorded(gone.why())));
    } else if (event instanceof GaugingEvent.LineBack) {
      return troubled("");
    }
    return this;
  }

  /** The line in words. */
  String words(DisplayUnit wanted) {
    String told = told(wanted);
    return trouble.isEmpty() ? told : BenchText.BESIDE_TROUBLE.with(told, trouble);
  }

  /** Asks about a held value of it. */
  Question question(Outcome.Held held, DisplayUnit wanted) {
    return Question.of(start, lengths(wanted), held).by(title());
  }

  private String told(DisplayUnit wanted) {
    if (start == null) {
      return shownMm == null
          ? BenchText.BESIDE_NOTHING.with(name)
          : BenchText.BESIDE_SHOWS.with(name, lengths(wanted).size(shownMm));
    }
    String done = Integer.toString(progress.done());
    String planned = Integer.toString(progress.planned());
    return lastMm == null
        ? BenchText.BESIDE_COUNT.with(title(), done, planned)
        : BenchText.BESIDE_LAST.with(title(), done, planned, value(lengths(wanted)));
  }

  private String title() {
    return Heading.gauged(start);
  }

  private String value(Lengths lengths) {
    return Saying.value(start, lengths, lastMm);
  }

  private Lengths lengths(DisplayUnit wanted) {
    DisplayUnit ofJob = start == null ? DisplayUnit.MM : start.job().displayUnit();
    return new Lengths(wanted == null ? ofJob : wanted);
  }

  private BesideLine said(Outcome outcome) {
    if (outcome instanceof Outcome.Taken taken) {
      return new BesideLine(
          name,
          start,
          progress,
          taken.valueMm(),
          shownMm,
          taken.cautions().stream().map(Told::recorded).collect(Collectors.joining("; ")));
    } else if (outcome instanceof Outcome.Restored restored) {
      return new BesideLine(name, start, progress, restored.valueMm(), shownMm, "");
    } else if (outcome instanceof Outcome.TakenBack) {
      return new BesideLine(
          name, start, progress, null, shownMm, BenchText.BESIDE_TAKEN_BACK.with());
    } else if (outcome instanceof Outcome.Refused refused) {
      return troubled(BenchText.SAID_NOT_TAKEN.with(Told.recorded(refused.why())));
    }
    return troubled(BenchText.SAID_NOT_TAKEN.with(Told.recorded(((Outcome.Held) outcome).why())));
  }

  private BesideLine at(Progress now) {
    return new BesideLine(name, start, now, lastMm, shownMm, trouble);
  }

  private BesideLine troubled(String words) {
    return new BesideLine(name, start, progress, lastMm, shownMm, words);
  }
}
