package boreledger.station.bench.model;

import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import boreledger.station.session.Outcome;

/**
 * A held value that waits for a person's answer.
 *
 * @param words the question
 * @param why what is odd about the value, and what to check first
 */
public record Question(String words, String why) {
  static Question of(Sitting sitting, Outcome.Held held) {
    Lengths lengths = sitting.lengths();
    double valueMm = held.picked().valueMm();
    String words =
        switch (sitting.measure()) {
          case BORE ->
              Text.QUESTION_BORE.with(
                  lengths.size(sizeMm(sitting, valueMm)),
                  lengths.size(sitting.job().engine().nominalBoreMm()));
          case GAP -> Text.QUESTION_GAP.with(lengths.size(valueMm));
          case RING_DEPTH -> Text.QUESTION_RING_DEPTH.with(lengths.size(valueMm));
        };
    return new Question(words, Told.recorded(held.why()));
  }

  private static double sizeMm(Sitting sitting, double valueMm) {
    return sitting.readsDeviation() ? sitting.job().setting().sizeMm() + valueMm : valueMm;
  }
}
