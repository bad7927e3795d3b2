package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Told;
import boreledger.station.bench.words.WindowText;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.DisplayUnit;
import boreledger.station.plan.Position;
import boreledger.station.results.JobResults;
import boreledger.station.session.Outcome;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.DoubleSupplier;
import javafx.beans.property.BooleanProperty;

/**
 * The bench without its screen: takes what a gauging run tells and keeps {@link Shown} what a
 * person should see of it. Several sessions may follow each other; each {@link GaugingEvent.Began}
 * starts afresh.
 *
 * <p>{@link #accept} may be called from any thread and returns at once. Everything else belongs to
 * the screen's thread.
 */
public final class BenchModel {
  private final Ear ear;
  private final DoubleSupplier clockS;
  private final Executor screen;
  private final Mailbox mailbox;
  private final ResultsFeed results;
  private final Shown shown = new Shown();
  private final Notices notices;
  private final Hands hands;

  private DisplayUnit shownUnit;
  private Sitting sitting;
  private Hearing hearing;
  private Besides besides;
  private Pace pace;
  private Ending ending;
  private String whyOver = "";

  /**
   * A bench that waits for its first session.
   *
   * @param screen runs what it is given on the screen's thread, in order
   * @param background runs what takes its time
   * @param clockS a clock that never runs back, in seconds
   */
  public BenchModel(
      BenchServices services, Executor screen, Executor background, DoubleSupplier clockS) {
    this.ear = new Ear(services.tones(), services.voice());
    this.notices = new Notices(shown, ear);
    this.hands = new Hands(services.wishes(), shown);
    this.clockS = clockS;
    this.screen = screen;
    this.mailbox = new Mailbox(screen, this::read);
    this.results =
        new ResultsFeed(
            services.results(), background, screen, this::computed, this::couldNotCompute);
  }

  /** Takes an event of the run, from any thread, in the order they happen. */
  public void accept(GaugingEvent event) {
    mailbox.put(event);
  }

  /**
   * Tells, from any thread, what stopped the run: the message of a fault of the line or of the
   * ledger. What was going on is over then, whether an event said so or not.
   *
   * @param why one plain sentence without its full stop
   */
  public void fail(String why) {
    screen.execute(() -> failed(Told.recorded(why)));
  }

  /**
   * Tells, from any thread, what does not work although the gauging goes on, such as speech.
   *
   * @param what one plain sentence without its full stop
   */
  public void caution(String what) {
    screen.execute(() -> notices.cautioned(what));
  }

  /** What is to be seen. */
  public Shown shown() {
    return shown;
  }

  /** Whether the tones are switched off. */
  public BooleanProperty mutedProperty() {
    return ear.muted();
  }

  /** Whether the next place, and what asks for attention, is said aloud. */
  public BooleanProperty spokenProperty() {
    return ear.spoken();
  }

  /** Asks what the readings mean, whether or not anything is being gauged. */
  public void askForResults() {
    results.ask();
  }

  /** Shows lengths in a unit; null for the one that the job names. */
  public void showIn(DisplayUnit unit) {
    shownUnit = unit;
    if (sitting != null) {
      sitting = sitting.in(unit);
      hands.repeat(sitting);
      showSitting();
      showLine();
    }
  }

  /** Lets time pass: to be called now and then, so that ages stay true. */
  public void tick() {
    if (sitting != null) {
      showLine();
    }
  }

  /** Takes the held value anyway; does nothing when none waits. */
  public void confirmHeld() {
    hands.confirm(sitting);
  }

  /** Leaves the held value; does nothing when none waits. */
  public void leaveHeld() {
    hands.leave(sitting);
  }

  /** Does what a person asks for; says so when nothing is being gauged. */
  public void perform(Command command) {
    whileGauging(() -> hands.perform(command, sitting));
  }

  /** Makes a position the next one, which has its reading already or not; says what came of it. */
  public void goTo(Position position) {
    whileGauging(() -> hands.goTo(position));
  }

  private void whileGauging(Runnable asked) {
    if (sitting == null || ending != null) {
      shown.saying.set(Saying.idle());
    } else {
      asked.run();
    }
  }

  private void read(List<GaugingEvent> events) {
    boolean moved = false;
    for (GaugingEvent event : events) {
      moved |= read(event);
    }
    if (sitting == null) {
      return;
    }
    if (moved) {
      showSitting();
    }
    showLine();
  }

  /** Whether more than the live values changed. */
  private boolean read(GaugingEvent event) {
    if (event instanceof GaugingEvent.Began began) {
      begin(began);
    } else if (sitting == null) {
      throw new IllegalStateException("a session begins before anything else is said of it");
    } else if (event instanceof GaugingEvent.Live live) {
      hearing.sampled(live.sample(), clockS.getAsDouble());
      return false;
    } else if (event instanceof GaugingEvent.Said said) {
      sitting = sitting.at(said.progress());
      say(said.outcome());
    } else if (event instanceof GaugingEvent.Noticed noticed) {
      notices.cautioned(noticed.what());
    } else if (event instanceof GaugingEvent.LineGone gone) {
      lineGone(gone);
    } else if (event instanceof GaugingEvent.LineBack back) {
      lineBack(back);
    } else if (event instanceof GaugingEvent.Beside beside) {
      boolean changed = besides.heard(beside);
      hands.repeat(sitting);
      if (changed) {
        results.ask();
      }
      return changed;
    } else if (event instanceof GaugingEvent.Over over) {
      sitting = sitting.at(over.progress());
      end(over.ending());
    }
    return true;
  }

  private void begin(GaugingEvent.Began began) {
    sitting = Sitting.of(began, shownUnit);
    hearing = new Hearing(began, mm -> Saying.value(sitting, mm));
    besides = new Besides(ear);
    hands.beside(besides);
    pace = Pace.none();
    ending = null;
    whyOver = "";
    ask(null);
    shown.saying.set(Saying.none());
    notices.clear();
    results.ask();
    ear.say(Spoken.next(sitting));
  }

  private void lineGone(GaugingEvent.LineGone gone) {
    sitting = sitting.at(gone.progress());
    hearing.line().gone(true);
    pace = pace.broken();
    notices.told(gone);
  }

  private void lineBack(GaugingEvent.LineBack back) {
    sitting = sitting.at(back.progress());
    hearing.line().gone(false);
    notices.told(back);
  }

  private void end(Ending how) {
    ending = how;
    hearing.line().over(how);
    besides.over();
    ask(null);
    notices.over();
    results.ask();
  }

  private void failed(String why) {
    shown.saying.set(Saying.failed(why));
    ear.lookAtMe();
    ear.say(Spoken.of(List.of(shown.saying.get().words())));
    if (sitting != null) {
      whyOver = why;
      end(ending == null ? Ending.STOPPED : ending);
      showSitting();
      showLine();
    }
  }

  private void say(Outcome outcome) {
    if (!(outcome instanceof Outcome.Asked)) {
      hearing.restart();
    }
    Saying saying = Saying.of(sitting, outcome);
    shown.saying.set(saying);
    if (outcome instanceof Outcome.Taken taken) {
      taken(taken);
    } else if (outcome instanceof Outcome.Refused refused) {
      // A held value still waits for its answer: noise on the line must not take it away.
      hearing.line().refused(refused.why());
      ear.lookAtMe();
    } else if (outcome instanceof Outcome.Held waiting) {
      hearing.line().refused(waiting.why());
      ask(waiting);
      ear.lookAtMe();
      Question question = shown.question.get();
      ear.say(Spoken.of(List.of(question.words(), question.why())));
    } else if (outcome instanceof Outcome.TakenBack back) {
      sitting = sitting.takingBack(back.position());
      changed(saying, ear::takenBack);
    } else if (outcome instanceof Outcome.Restored restored) {
      sitting = sitting.taking(restored.position(), restored.valueMm());
      changed(saying, ear::taken);
    } else if (outcome instanceof Outcome.NotDone || outcome instanceof Outcome.Asked) {
      asked(outcome);
    } else {
      // Another place waits now, or the held value was left.
      ask(null);
      ear.lookAtMe();
      ear.say(Spoken.after(sitting, List.of(saying.words())));
    }
  }

  private void asked(Outcome outcome) {
    if (outcome instanceof Outcome.NotDone) {
      ear.lookAtMe();
      ear.say(Spoken.of(List.of(shown.saying.get().words())));
    }
  }

  private void taken(Outcome.Taken taken) {
    ask(null);
    sitting = sitting.taking(taken.position(), taken.valueMm());
    pace = pace.reading(clockS.getAsDouble());
    if (taken.cautions().isEmpty()) {
      notices.clear();
    }
    results.ask();
    ear.taken();
    ear.say(
        Spoken.after(
            sitting,
            shown.saying.get().cautions().stream().map(WindowText.CAUTION::with).toList()));
  }

  /** A reading that was there already counts no more, or again. */
  private void changed(Saying saying, Runnable tone) {
    ask(null);
    results.ask();
    tone.run();
    ear.say(Spoken.after(sitting, List.of(saying.words())));
  }

  private void ask(Outcome.Held waiting) {
    hands.ask(sitting, waiting);
  }

  private void computed(JobResults computed) {
    shown.results.set(computed);
    if (sitting != null) {
      sitting = sitting.with(computed);
      showSitting();
    }
  }

  private void couldNotCompute(String fault) {
    if (sitting == null) {
      shown.saying.set(Saying.failed(fault));
      return;
    }
    sitting = sitting.withoutResults(BenchText.SAID_RESULTS_FAILED.with(fault));
    shown.saying.set(shown.saying.get().cautioned(sitting.resultsFault()));
    showSitting();
  }

  private void showSitting() {
    shown.heading.set(Heading.of(sitting));
    shown.place.set(Place.of(sitting));
    shown.block.set(BlockPicture.of(sitting));
    shown.section.set(SectionPicture.of(sitting));
    shown.grid.set(new GridBuilder(sitting).grid());
    shown.progress.set(PlanProgress.of(sitting, pace));
    shown.closing.set(ending == null ? null : Closing.of(sitting, ending, whyOver));
  }

  private void showLine() {
    hearing.show(sitting, clockS.getAsDouble(), shown);
    shown.besides.set(besides.shown(shownUnit));
  }
}
