package boreledger.station.bench.model;

import boreledger.drivers.profile.Reads;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import boreledger.station.session.Outcome;
import boreledger.station.session.SessionStart;
import java.util.List;
import java.util.stream.Stream;

/**
 * The last thing that happened, in words.
 *
 * @param cautions plain sentences that belong to it; often empty
 */
public record Saying(Kind kind, String words, List<String> cautions) {
  /** What kind of thing it was. */
  public enum Kind {
    /** Nothing yet. */
    NONE,
    /** A reading was taken. */
    TAKEN,
    /** A reading does not count any more. */
    TAKEN_BACK,
    /** Another position is next, or the gauge was asked. */
    MOVED,
    /** Something became no reading, or was not done. */
    NOT_TAKEN,
    /** A value waits for an answer, or was left. */
    HELD
  }

  /** Takes a copy of the list. */
  public Saying {
    cautions = List.copyOf(cautions);
  }

  static Saying none() {
    return new Saying(Kind.NONE, BenchText.SAID_NONE.with(), List.of());
  }

  static Saying failed(String why) {
    return new Saying(Kind.NOT_TAKEN, BenchText.SAID_FAILED.with(why), List.of());
  }

  static Saying of(Sitting sitting, Outcome outcome) {
    if (outcome instanceof Outcome.Taken taken) {
      String place = Place.brief(sitting.lengths(), taken.position());
      String words = BenchText.SAID_TAKEN.with(place, value(sitting, taken.valueMm()));
      return new Saying(Kind.TAKEN, words, taken.cautions().stream().map(Told::recorded).toList());
    } else if (outcome instanceof Outcome.Refused refused) {
      return new Saying(
          Kind.NOT_TAKEN, BenchText.SAID_NOT_TAKEN.with(Told.recorded(refused.why())), List.of());
    } else if (outcome instanceof Outcome.TakenBack back) {
      String place = Place.brief(sitting.lengths(), back.position());
      String words = BenchText.SAID_TAKEN_BACK.with(place, value(sitting, back.valueMm()));
      return new Saying(Kind.TAKEN_BACK, words, List.of());
    } else if (outcome instanceof Outcome.Restored restored) {
      String place = Place.brief(sitting.lengths(), restored.position());
      String words = BenchText.SAID_RESTORED.with(place, value(sitting, restored.valueMm()));
      return new Saying(Kind.TAKEN, words, List.of());
    }
    return outcome instanceof Outcome.Held waiting
        ? held(sitting, waiting, BenchText.SAID_HELD)
        : asked(sitting, outcome);
  }

  /** What came of something that a person asked for. */
  private static Saying asked(Sitting sitting, Outcome outcome) {
    if (outcome instanceof Outcome.Skipped skipped) {
      String place = Place.brief(sitting.lengths(), skipped.position());
      Text words = sitting.has(skipped.position()) ? BenchText.SAID_KEPT : BenchText.SAID_SKIPPED;
      return new Saying(Kind.MOVED, words.with(place), List.of());
    } else if (outcome instanceof Outcome.GoingTo going) {
      String place = Place.brief(sitting.lengths(), going.position());
      Text words = going.again() ? BenchText.SAID_AGAIN : BenchText.SAID_GOING;
      return new Saying(Kind.MOVED, words.with(place), List.of());
    } else if (outcome instanceof Outcome.Left left) {
      return left(sitting, left.held());
    } else if (outcome instanceof Outcome.NotDone not) {
      return new Saying(Kind.NOT_TAKEN, BenchText.SAID_NOT_DONE.with(not.why()), List.of());
    }
    return new Saying(Kind.MOVED, BenchText.SAID_ASKED.with(), List.of());
  }

  /** Somebody asked for something while nothing is being gauged. */
  static Saying idle() {
    return new Saying(
        Kind.NOT_TAKEN, BenchText.SAID_NOT_DONE.with(BenchText.SAID_IDLE.with()), List.of());
  }

  static Saying left(Sitting sitting, Outcome.Held held) {
    return held(sitting, held, BenchText.SAID_LEFT);
  }

  static Saying taking(Sitting sitting, Outcome.Held held) {
    return held(sitting, held, BenchText.SAID_TAKING);
  }

  /** The same with one more caution, unless it has it already. */
  Saying cautioned(String caution) {
    if (cautions.contains(caution)) {
      return this;
    }
    return new Saying(kind, words, Stream.concat(cautions.stream(), Stream.of(caution)).toList());
  }

  /** A value as the gauge gave it: deviations with their sign. */
  static String value(Sitting sitting, double valueMm) {
    return value(sitting.start(), sitting.lengths(), valueMm);
  }

  /** A value as the gauge of a session gave it. */
  static String value(SessionStart start, Lengths lengths, double valueMm) {
    return start.gauge().reads() == Reads.DEVIATION
        ? lengths.deviation(valueMm)
        : lengths.size(valueMm);
  }

  private static Saying held(Sitting sitting, Outcome.Held held, Text text) {
    String place = Place.brief(sitting.lengths(), held.position());
    String words = text.with(place, value(sitting, held.picked().valueMm()));
    return new Saying(Kind.HELD, words, List.of());
  }
}
