package boreledger.drivers.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.LineSettings.Parity;
import boreledger.drivers.profile.LineSettings.StopBits;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepLearnerTest {
  private static final int MOST_PRESSES = 40;

  private static InventedGauge named(String name) {
    return Corpus.knowable().stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
  }

  private static LineSettings set(int baud, int dataBits, Parity parity) {
    return new LineSettings(baud, dataBits, parity, StopBits.ONE, true, true);
  }

  private static ShownValue mm(String number) {
    return new ShownValue(new BigDecimal(number), LengthUnit.MM);
  }

  private static LineEvent.Chunk chunk(double tS, String latin1) {
    return new LineEvent.Chunk(
        tS,
        boreledger.drivers.line.Bytes.of(
            latin1.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)));
  }

  /** A person who sets the gauge to whatever is asked for, until it is certain. */
  private static int teach(StepLearner learner, GaugeAtPort port) throws LineFault {
    int presses = 0;
    Line line = port.open(learner.setting());
    int turn = learner.turn();
    while (!learner.learned().certain() && presses < MOST_PRESSES) {
      if (turn != learner.turn()) {
        line.close();
        line = port.open(learner.setting());
        turn = learner.turn();
      }
      presses++;
      BigDecimal wantedMm = learner.learned().next().mm();
      port.say("Set the gauge to " + wantedMm.toPlainString() + " mm");
      LineEvent event = line.read(Duration.ofSeconds(30));
      if (event instanceof LineEvent.Chunk chunk) {
        learner.pressed(List.of(chunk), new ShownValue(wantedMm, LengthUnit.MM));
      } else {
        learner.giveUp();
      }
    }
    line.close();
    return presses;
  }

  @ParameterizedTest
  @CsvSource({
    "'plus and minus, CRLF', 9600, 8, NONE, 4",
    "'plus and minus, CRLF', 9600, 7, EVEN, 4",
    "'STX and ETX', 4800, 7, ODD, 10",
    "'label and unit', 19200, 8, NONE, 9",
    "'int16 big, sum', 9600, 8, NONE, 5",
    "'int24 big, CRC-8', 38400, 8, NONE, 30",
    "'two registers, high first', 19200, 8, NONE, 12",
  })
  void followingItsWishesFindsTheSettingAndTheProfile(
      String name, int baud, int dataBits, Parity parity, int mostPresses) throws Exception {
    GaugeAtPort port = new GaugeAtPort(named(name), set(baud, dataBits, parity));
    StepLearner learner = new StepLearner();

    int presses = teach(learner, port);

    Learned learned = learner.learned();
    assertTrue(learned.certain(), () -> learned + " " + port.said);
    String profile = learned.candidates().get(0).profile();
    assertEquals(set(baud, dataBits, parity), GaugeProfiles.parse("p", profile).line());
    assertTrue(presses <= mostPresses, () -> presses + " presses: " + port.said);
    assertEquals(0, port.linesLeftOpen());
  }

  @Test
  void everyKnowableGaugeIsLearnedByFollowingItsWishesAndNoneWrongly() throws Exception {
    List<String> unsure = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    int certain = 0;
    for (InventedGauge gauge : Corpus.knowable()) {
      StepLearner learner = new StepLearner();
      Recording recording = new Recording(gauge, 11);
      int told = 0;
      for (int i = 0; i < 9 && !learner.learned().certain(); i++) {
        NextValue next = learner.learned().next();
        boolean inch = next.settles() == Open.INCH;
        Reading reading = gauge.set(next.mm(), inch ? LengthUnit.IN : LengthUnit.MM);
        recording.press(reading, 1);
        List<LineEvent.Chunk> all = recording.chunks();
        learner.pressed(
            all.subList(told, all.size()),
            new ShownValue(InventedGauge.displayedMm(reading), LengthUnit.MM));
        told = all.size();
      }
      Learned learned = learner.learned();
      if (!learned.certain()) {
        unsure.add(gauge + ": " + learned.why());
        continue;
      }
      certain++;
      String problem = FreshFrames.wrong(gauge, learned.candidates().get(0).profile(), 12);
      if (!problem.isEmpty()) {
        wrong.add(gauge + ": " + problem);
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(List.of(), unsure);
    assertEquals(Corpus.knowable().size(), certain);
  }

  @Test
  void aValueTakenBackIsForgotten() {
    StepLearner learner = new StepLearner();
    learner.pressed(List.of(chunk(1, "+0.000\r\n")), mm("0.000"));
    learner.pressed(List.of(chunk(3, "+5.000\r\n")), mm("5.000"));
    learner.pressed(List.of(chunk(5, "+1.000\r\n")), mm("2.000"));
    assertTrue(learner.learned().candidates().isEmpty(), "2.000 was not what it showed");

    learner.takeBack();
    learner.pressed(List.of(chunk(7, "+1.000\r\n")), mm("1.000"));
    learner.pressed(List.of(chunk(9, "-2.345\r\n")), mm("-2.345"));

    assertTrue(learner.learned().certain(), learner.learned()::toString);
    assertEquals(4, learner.shown().size());
  }

  @Test
  void oneValueAloneAsksForAnotherFarFromIt() {
    StepLearner learner = new StepLearner();
    assertEquals(new BigDecimal("0.000"), learner.learned().next().mm());

    learner.pressed(List.of(chunk(1, "+0.000\r\n")), mm("0.000"));

    assertFalse(learner.learned().certain());
    assertEquals(Open.SIZES, learner.learned().next().settles());
  }

  @Test
  void aWrongValueAtATextGaugeDoesNotGiveTheSettingUp() {
    StepLearner learner = new StepLearner();
    for (int i = 0; i < 6; i++) {
      learner.pressed(List.of(chunk(2 * i, "+0.00" + i + "\r\n")), mm("7.00" + (9 - i)));
    }
    assertEquals(1, learner.turn());
    assertEquals(6, learner.shown().size());
  }

  @Test
  void settingsComeAgainWhenAllWereTried() {
    StepLearner learner = new StepLearner();
    LineSettings first = learner.setting();
    int settings = PortLearner.settings().size();
    for (int i = 0; i < settings; i++) {
      learner.giveUp();
    }
    assertEquals(first, learner.setting());
    assertEquals(settings + 1, learner.turn());
  }
}
