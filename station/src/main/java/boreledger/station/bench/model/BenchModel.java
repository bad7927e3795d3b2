package boreledger.station.bench.model;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.words.Text;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.DisplayUnit;
import boreledger.station.results.JobResults;
import boreledger.station.session.Outcome;
import boreledger.station.session.Plausible;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.DoubleSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/**
 * The bench without its screen: takes what a gauging run tells and keeps {@link Shown} what a
 * person should see of it. Several sessions may follow each other; each {@link GaugingEvent.Began}
 * starts afresh.
 *
 * <p>{@link #accept} may be called from any thread and returns at once. Everything else belongs to
 * the screen's thread.
 */
public final class BenchModel {
  private final HeldAnswers answers;
  private final Tones tones;
  private final DoubleSupplier clockS;
  private final Executor screen;
  private final Mailbox mailbox;
  private final ResultsFeed results;
  private final Shown shown = new Shown();
  private final BooleanProperty muted = new SimpleBooleanProperty(false);

  private DisplayUnit shownUnit;
  private Sitting sitting;
  private LineWatch line;
  private TraceRecorder trace;
  private Sample lastSample;
  private Outcome.Held held;
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
    this.answers = services.answers();
    this.tones = services.tones();
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
    screen.execute(() -> failed(why));
  }

  /** What is to be seen. */
  public Shown shown() {
    return shown;
  }

  /** Whether the tones are switched off. */
  public BooleanProperty mutedProperty() {
    return muted;
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
      shown.question.set(held == null ? null : Question.of(sitting, held));
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
    if (held != null) {
      Outcome.Held answered = answer();
      shown.saying.set(Saying.taking(sitting, answered));
      answers.confirm(answered);
    }
  }

  /** Leaves the held value; does nothing when none waits. */
  public void leaveHeld() {
    if (held != null) {
      Outcome.Held answered = answer();
      shown.saying.set(Saying.left(sitting, answered));
      answers.leave(answered);
    }
  }

  private Outcome.Held answer() {
    Outcome.Held answered = held;
    ask(null);
    return answered;
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

  /** Whether more than the live value changed. */
  private boolean read(GaugingEvent event) {
    if (event instanceof GaugingEvent.Began began) {
      begin(began);
    } else if (sitting == null) {
      throw new IllegalStateException("a session begins before anything else is said of it");
    } else if (event instanceof GaugingEvent.Live live) {
      lastSample = live.sample();
      line.sampled(clockS.getAsDouble());
      trace.add(lastSample);
      return false;
    } else if (event instanceof GaugingEvent.Said said) {
      sitting = sitting.at(said.progress());
      say(said.outcome());
    } else if (event instanceof GaugingEvent.Over over) {
      sitting = sitting.at(over.progress());
      end(over.ending());
    }
    return true;
  }

  private void end(Ending how) {
    ending = how;
    line.over(how);
    ask(null);
    results.ask();
  }

  private void failed(String why) {
    shown.saying.set(Saying.failed(why));
    sound(tones::lookAtMe);
    if (sitting != null) {
      whyOver = why;
      end(ending == null ? Ending.STOPPED : ending);
      showSitting();
      showLine();
    }
  }

  private void begin(GaugingEvent.Began began) {
    sitting = Sitting.of(began, shownUnit);
    line = new LineWatch(began.start().line(), began.lineNotes());
    Plausible plausible = began.start().plausible();
    trace =
        new TraceRecorder(plausible.lowMm(), plausible.highMm(), mm -> Saying.value(sitting, mm));
    lastSample = null;
    ending = null;
    whyOver = "";
    ask(null);
    shown.saying.set(Saying.none());
    results.ask();
  }

  private void say(Outcome outcome) {
    trace.restart();
    shown.saying.set(Saying.of(sitting, outcome));
    if (outcome instanceof Outcome.Taken taken) {
      ask(null);
      sitting = sitting.taking(taken.position(), taken.valueMm());
      results.ask();
      sound(tones::taken);
      return;
    } else if (outcome instanceof Outcome.Refused refused) {
      // A held value still waits for its answer: noise on the line must not take it away.
      line.refused(refused.why());
    } else if (outcome instanceof Outcome.Held waiting) {
      line.refused(waiting.why());
      ask(waiting);
    } else if (outcome instanceof Outcome.TakenBack back) {
      ask(null);
      sitting = sitting.takingBack(back.position());
      results.ask();
    } else if (outcome instanceof Outcome.Restored restored) {
      ask(null);
      sitting = sitting.taking(restored.position(), restored.valueMm());
      results.ask();
    }
    sound(tones::lookAtMe);
  }

  private void sound(Runnable tone) {
    if (!muted.get()) {
      tone.run();
    }
  }

  private void ask(Outcome.Held waiting) {
    held = waiting;
    shown.question.set(waiting == null ? null : Question.of(sitting, waiting));
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
    sitting = sitting.withoutResults(Text.SAID_RESULTS_FAILED.with(fault));
    shown.saying.set(shown.saying.get().cautioned(sitting.resultsFault()));
    showSitting();
  }

  private void showSitting() {
    shown.heading.set(Heading.of(sitting));
    shown.place.set(Place.of(sitting));
    shown.block.set(BlockPicture.of(sitting));
    shown.section.set(SectionPicture.of(sitting));
    shown.grid.set(new GridBuilder(sitting).grid());
    shown.progress.set(PlanProgress.of(sitting));
    shown.closing.set(ending == null ? null : Closing.of(sitting, ending, whyOver));
  }

  private void showLine() {
    double nowS = clockS.getAsDouble();
    shown.line.set(line.health(nowS));
    boolean rocks = sitting.start().gauge().pick() instanceof PickSpec.Rock;
    shown.trace.set(rocks ? trace.trace() : null);
    shown.live.set(
        lastSample == null
            ? LiveValue.none(sitting.lengths())
            : LiveValue.of(sitting, lastSample, line.ageS(nowS)));
  }
}
