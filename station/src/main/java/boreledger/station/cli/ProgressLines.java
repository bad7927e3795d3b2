package boreledger.station.cli;

import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Began;
import boreledger.station.gauging.GaugingEvent.Beside;
import boreledger.station.gauging.GaugingEvent.LineBack;
import boreledger.station.gauging.GaugingEvent.LineGone;
import boreledger.station.gauging.GaugingEvent.Noticed;
import boreledger.station.gauging.GaugingEvent.Over;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import java.util.Locale;
import java.util.function.Consumer;

/** Tells a gauging run on standard error, one line for each event that matters. */
final class ProgressLines implements Consumer<GaugingEvent> {
  private final Answer answer;
  private final String from;

  ProgressLines(Answer answer) {
    this(answer, "");
  }

  /** Lines that each begin with whom they are from. */
  private ProgressLines(Answer answer, String from) {
    this.answer = answer;
    this.from = from;
  }

  @Override
  public void accept(GaugingEvent event) {
    if (event instanceof Began began) {
      began(began);
    } else if (event instanceof Said said) {
      said(said.outcome(), said.progress());
    } else if (event instanceof Beside beside) {
      new ProgressLines(answer, "[" + beside.gauge() + "] ").accept(beside.event());
    } else if (event instanceof Noticed noticed) {
      tell("note: " + noticed.what());
    } else if (event instanceof LineGone gone) {
      tell("gone: " + gone.why());
    } else if (event instanceof LineBack back) {
      tell("back: " + back.how());
      next(back.progress().next());
    } else if (event instanceof Over over && over.ending() != Ending.LINE_BROKE) {
      over(over);
    }
  }

  private void began(Began began) {
    tell(
        String.format(
            Locale.ROOT,
            "%s session %d of %s: %s, from %s",
            began.resumed() ? "resumed" : "opened",
            began.session(),
            began.start().job().name(),
            began.start().measure().word(),
            began.start().line()));
    began.lineNotes().forEach(note -> tell("note: " + note));
    next(began.progress().next());
  }

  private void said(Outcome outcome, Progress progress) {
    if (outcome instanceof Outcome.Taken taken) {
      tell(
          String.format(
              Locale.ROOT,
              "taken %d of %d: %s, %+.4f mm, entry %d",
              progress.done(),
              progress.planned(),
              taken.position().words(),
              taken.valueMm(),
              taken.entry()));
      taken.cautions().forEach(caution -> tell("caution: " + caution));
      next(taken.next());
    } else if (outcome instanceof Outcome.Refused refused) {
      tell("refused: " + refused.why());
    } else if (outcome instanceof Outcome.Held held) {
      tell("refused: " + held.why());
    } else if (outcome instanceof Outcome.TakenBack back) {
      tell(
          String.format(
              Locale.ROOT,
              "taken back: %s, %+.4f mm, entry %d; the same again restores it",
              back.position().words(),
              back.valueMm(),
              back.entry()));
      next(back.position());
    } else if (outcome instanceof Outcome.Restored restored) {
      tell(
          String.format(
              Locale.ROOT,
              "restored: %s, %+.4f mm, entry %d",
              restored.position().words(),
              restored.valueMm(),
              restored.entry()));
      next(restored.next());
    } else {
      granted(outcome);
    }
  }

  private void granted(Outcome outcome) {
    if (outcome instanceof Outcome.Skipped skipped) {
      tell("skipped: " + skipped.position().words());
      next(skipped.next());
    } else if (outcome instanceof Outcome.GoingTo to) {
      tell(to.again() ? "to be gauged again: the reading there stands until then" : "as chosen");
      next(to.position());
    } else if (outcome instanceof Outcome.Left left) {
      tell("left: " + left.held().position().words());
    } else if (outcome instanceof Outcome.Asked) {
      tell("asked: the gauge is to send a reading");
    } else if (outcome instanceof Outcome.NotDone not) {
      tell("not done: " + not.why());
    }
  }

  private void next(Position position) {
    if (position != null) {
      tell("next: " + position.words());
    }
  }

  private void over(Over over) {
    if (over.ending() == Ending.PLAN_DONE) {
      tell("done: every position has its reading");
    } else if (over.progress().next() != null) {
      tell(
          String.format(
              Locale.ROOT,
              "unfinished: %d of %d positions, next %s",
              over.progress().done(),
              over.progress().planned(),
              over.progress().next().words()));
    }
  }

  private void tell(String line) {
    answer.tell(from + line);
  }
}
