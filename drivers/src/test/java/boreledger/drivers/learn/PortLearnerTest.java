package boreledger.drivers.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.LineSettings.Parity;
import boreledger.drivers.profile.LineSettings.StopBits;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortLearnerTest {
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private static InventedGauge named(String name) {
    return Corpus.knowable().stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
  }

  private static LineSettings set(int baud, int dataBits, Parity parity) {
    return new LineSettings(baud, dataBits, parity, StopBits.ONE, true, true);
  }

  private static Learned learn(GaugeAtPort port) throws LineFault {
    List<ShownValue> shown =
        Stream.of("0.000", "1.000", "5.000", "-2.345", "12.700")
            .map(mm -> new ShownValue(new BigDecimal(mm), LengthUnit.MM))
            .toList();
    return new PortLearner(port, port, shown, PATIENCE).learn();
  }

  @ParameterizedTest
  @CsvSource({
    "'plus and minus, CRLF', 9600, 8, NONE, 5",
    "'plus and minus, CRLF', 9600, 7, EVEN, 5",
    "'STX and ETX', 4800, 7, ODD, 11",
    "'label and unit', 19200, 8, NONE, 10",
    "'int16 big, sum', 9600, 8, NONE, 5",
    "'two registers, high first', 19200, 8, NONE, 10",
  })
  void theSettingIsFoundWithTheProfile(
      String name, int baud, int dataBits, Parity parity, int presses)
      throws LineFault, FileProblem {
    GaugeAtPort port = new GaugeAtPort(named(name), set(baud, dataBits, parity));

    Learned learned = learn(port);

    assertTrue(learned.certain(), learned::toString);
    String profile = learned.candidates().get(0).profile();
    assertEquals(set(baud, dataBits, parity), GaugeProfiles.parse("p", profile).line());
    assertEquals(presses, port.presses(), port.said::toString);
    assertEquals(0, port.linesLeftOpen());
  }

  @Test
  void bytesAtAnUnusualBaudAreTriedAgainWithAllValues() throws LineFault, FileProblem {
    GaugeAtPort port = new GaugeAtPort(named("int24 big, CRC-8"), set(38_400, 8, Parity.NONE));

    Learned learned = learn(port);

    assertTrue(learned.certain(), learned::toString);
    String profile = learned.candidates().get(0).profile();
    assertEquals(38_400, GaugeProfiles.parse("p", profile).line().baud());
  }

  @Test
  void aSilentPortIsToldOf() throws LineFault {
    InventedGauge mute = InventedGauge.of("mute", "0.001", reading -> new byte[0]);
    GaugeAtPort port = new GaugeAtPort(mute, LineSettings.DEFAULT);

    Learned learned = learn(port);

    assertFalse(learned.certain());
    assertEquals("no gauge's bytes were heard at any setting tried", learned.why());
    assertTrue(port.said.contains("Nothing was heard."));
    assertEquals(0, port.linesLeftOpen());
  }

  @Test
  void aPortThatBreaksIsAFault() {
    PortOpener broken =
        settings -> {
          throw new LineFault("a port: it broke");
        };
    PortLearner learner =
        new PortLearner(
            broken, line -> {}, List.of(new ShownValue(BigDecimal.ONE, LengthUnit.MM)), PATIENCE);
    assertThrows(LineFault.class, learner::learn);
  }
}
