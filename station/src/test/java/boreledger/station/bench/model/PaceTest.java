package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The expected times are medians worked out by hand. */
class PaceTest {
  @Test
  void nothingIsSaidBeforeThreeReadings() {
    assertEquals(OptionalDouble.empty(), Pace.none().leftS(20));
    assertEquals(OptionalDouble.empty(), at(100).leftS(19));
    assertEquals(OptionalDouble.empty(), at(100, 120).leftS(18));
  }

  @Test
  void theTimeLeftIsTheMedianTimeForEachReadingStillToCome() {
    // Times of 20, 30 and 22 s: the median is 22 s.
    assertEquals(OptionalDouble.of(10 * 22), at(100, 120, 150, 172).leftS(10));
  }

  @Test
  void ofAnEvenNumberOfTimesItIsTheMeanOfTheMiddleTwo() {
    // Times of 20 and 30 s.
    assertEquals(OptionalDouble.of(4 * 25), at(100, 120, 150).leftS(4));
  }

  @Test
  void aPauseIsLeftOut() {
    // 20, 24 and 1800 s: the last one is a lunch. Of the rest the median is 22 s.
    assertEquals(OptionalDouble.of(22), at(0, 20, 44, 1844).leftS(1));
  }

  @Test
  void aPauseAmongTwoTimesIsLeftOutToo() {
    assertEquals(OptionalDouble.of(3 * 20), at(0, 600, 620).leftS(3));
  }

  @Test
  void timeInWhichTheLineWasAwayIsNoWork() {
    Pace pace = at(0, 20).broken().reading(50).reading(70);

    // 20 s before and 20 s after; the 30 s between belong to neither.
    assertEquals(OptionalDouble.of(5 * 20), pace.leftS(5));
  }

  @Test
  void breaksAfterEachReadingLeaveNothingToSay() {
    Pace pace = at(0).broken().reading(20).broken().reading(40).broken();

    assertEquals(OptionalDouble.empty(), pace.leftS(5));
  }

  @Test
  void nothingIsLeftOfAPlanThatIsDone() {
    assertEquals(OptionalDouble.of(0), at(0, 20, 40).leftS(0));
  }

  @Test
  void shortTimesAreSaidAsSuchLongOnesInHours() {
    assertEquals("", TimeLeft.words(OptionalDouble.empty()));
    assertEquals("less than a minute left", TimeLeft.words(OptionalDouble.of(59)));
    assertEquals("about 1 min left", TimeLeft.words(OptionalDouble.of(89)));
    assertEquals("about 12 min left", TimeLeft.words(OptionalDouble.of(12 * 60 + 10)));
    assertEquals("about 89 min left", TimeLeft.words(OptionalDouble.of(89 * 60)));
    assertEquals("about 2 h 5 min left", TimeLeft.words(OptionalDouble.of(125 * 60)));
  }

  private static Pace at(double... timesS) {
    Pace pace = Pace.none();
    for (double tS : timesS) {
      pace = pace.reading(tS);
    }
    return pace;
  }
}
