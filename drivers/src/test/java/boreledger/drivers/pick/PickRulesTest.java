package boreledger.drivers.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.util.List;
import org.junit.jupiter.api.Test;

class PickRulesTest {
  private static GaugeProfile profile(String name, String rule) throws Exception {
    String text = GaugeProfiles.find(name, List.of()).source().text();
    return GaugeProfiles.parse("p", text.replaceAll("rule = \".*\"", "rule = \"" + rule + "\""));
  }

  @Test
  void ruleIsTheProfiles() throws Exception {
    assertInstanceOf(PressRule.class, PickRules.plain(profile("ascii-line-size", "press"), null));
    assertInstanceOf(SettleRule.class, PickRules.plain(profile("ascii-line-size", "settle"), null));
    assertInstanceOf(RockRule.class, PickRules.plain(profile("ascii-line-size", "rock"), null));
  }

  @Test
  void pressedSampleGivesTheSameReadingAgain() throws Exception {
    GaugeProfile profile = profile("ascii-line-size", "press");
    Sample sample = Samples.at(1, 0.5);
    List<PickEvent> events = PickRules.of(profile, null).accept(sample);
    assertEquals(events.get(0), PickRules.again(profile, List.of(sample)));
  }

  @Test
  void rockedSamplesAreAskedOfTheEstimator() throws Exception {
    GaugeProfile profile = profile("ascii-line-deviation", "rock");
    List<Sample> samples = List.of(Samples.at(0, 0.1), Samples.at(1, 0.2));
    assertEquals(samples, PickRules.again(profile, samples).samples());
  }

  @Test
  void windowTheWrongWayRoundIsRefused() {
    assertEquals(
        "2.0 mm to -0.5 mm is no window",
        assertThrows(IllegalArgumentException.class, () -> new PlausibleWindow(2, -0.5))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> new PlausibleWindow(Double.NaN, 1));
  }
}
