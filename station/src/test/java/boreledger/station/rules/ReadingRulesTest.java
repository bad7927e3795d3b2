package boreledger.station.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.Version;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingRulesTest {
  private static final SmallGauge SETTLING =
      SmallGauge.deviation().with("rule = \"press\"", "rule = \"settle\"");

  @ParameterizedTest
  @CsvSource({
    "0.0.9, ROUNDED",
    "0.0.10-rc1, ROUNDED",
    "0.1.0, UNROUNDED",
    "0.10.0, UNROUNDED",
    "1.0.0, UNROUNDED",
    "0.0, UNROUNDED",
    "home made, UNROUNDED",
    "99999999999.0.0, UNROUNDED"
  })
  void aVersionGoesByTheNewestRulesThatItKnew(String program, ReadingRules rules) {
    assertSame(rules, ReadingRules.of(program));
  }

  @Test
  void thisProgramGoesByTheRulesOfNow() {
    assertSame(ReadingRules.now(), ReadingRules.of(Version.PROGRAM));
  }

  /** Worked out by hand: the mean of 0.021, 0.021 and 0.022 is 0.0213…; that of 2 and 3, 0.0025. */
  @Test
  void onlyTheFirstRulesRoundASettledReading() {
    assertEquals(0.021, valueMm(ReadingRules.ROUNDED, SETTLING, 0.021, 0.021, 0.022));
    assertEquals(0.064 / 3, valueMm(ReadingRules.UNROUNDED, SETTLING, 0.021, 0.021, 0.022), 1e-15);
    assertEquals(0.003, valueMm(ReadingRules.ROUNDED, SETTLING, 0.002, 0.003), "halves upward");
    assertEquals(0.0215, valueMm(ReadingRules.ROUNDED, SmallGauge.deviation(), 0.021, 0.0215));
  }

  private static double valueMm(ReadingRules rules, SmallGauge gauge, double... valuesMm) {
    List<Sample> samples =
        Arrays.stream(valuesMm)
            .mapToObj(mm -> new Sample(1, Bytes.of(new byte[] {'x'}), mm, LengthUnit.MM, false))
            .toList();
    PickEvent.Picked picked = (PickEvent.Picked) rules.again(gauge.profile(), samples);
    return picked.valueMm();
  }
}
