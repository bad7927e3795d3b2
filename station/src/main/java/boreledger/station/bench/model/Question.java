package boreledger.station.bench.model;

import boreledger.drivers.profile.Reads;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Told;
import boreledger.station.session.Outcome;
import boreledger.station.session.SessionStart;

/**
 * A held value that waits for a person's answer.
 *
 * @param words the question
 * @param why what is odd about the value, and what to check first
 */
public record Question(String words, String why) {
  static Question of(Sitting sitting, Outcome.Held held) {
    return of(sitting.start(), sitting.lengths(), held);
  }

  /** About a value of a further gauge, which is named. */
  Question by(String gauge) {
    return new Question(BenchText.QUESTION_BESIDE.with(gauge, words), why);
  }

  static Question of(SessionStart start, Lengths lengths, Outcome.Held held) {
    double valueMm = held.picked().valueMm();
    String words =
        switch (start.measure()) {
          case BORE ->
              BenchText.QUESTION_BORE.with(
                  lengths.size(sizeMm(start, valueMm)),
                  lengths.size(start.job().engine().nominalBoreMm()));
          case GAP -> BenchText.QUESTION_GAP.with(lengths.size(valueMm));
          case RING_DEPTH -> BenchText.QUESTION_RING_DEPTH.with(lengths.size(valueMm));
        };
    return new Question(words, Told.recorded(held.why()));
  }

  private static double sizeMm(SessionStart start, double valueMm) {
    boolean deviation = start.gauge().reads() == Reads.DEVIATION;
    return deviation ? start.job().setting().sizeMm() + valueMm : valueMm;
  }
}
