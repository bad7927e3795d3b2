package boreledger.drivers.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.line.Bytes;
import org.junit.jupiter.api.Test;

/** What the tables of a profile may say beyond the sample. */
class ProfileTablesTest {
  private static PickSpec pick(String lines) throws Exception {
    return ProfileSample.parse(ProfileSample.with("rule = \"rock\"", lines)).pick();
  }

  private static FrameSpec frame(String lines) throws Exception {
    String text = ProfileSample.TEXT;
    int from = text.indexOf("kind = ");
    int to = text.indexOf("[decode]");
    return ProfileSample.parse(text.substring(0, from) + lines + "\n" + text.substring(to)).frame();
  }

  @Test
  void pickRulesHaveDefaults() throws Exception {
    assertEquals(new PickSpec.Press(5), pick("rule = 'press'"));
    assertEquals(new PickSpec.Settle(0.8, 0.003, 0.02), pick("rule = 'settle'"));
    assertEquals(new PickSpec.Rock(2.0, 1.5, 3), pick("rule = 'rock'"));
  }

  @Test
  void pickRulesTakeParameters() throws Exception {
    assertEquals(new PickSpec.Press(9), pick("rule = 'press'\nstuck_after = 9"));
    assertEquals(
        new PickSpec.Settle(2, 0.01, 0.1),
        pick("rule = 'settle'\nfor_s = 2\nwithin_mm = 0.01\nmove_mm = 0.1"));
    assertEquals(
        new PickSpec.Rock(0.5, 3, 6),
        pick("rule = 'rock'\nleaves_above_mm = 0.5\nleaves_after_s = 3\nmin_rocks = 6"));
  }

  @Test
  void coarseGaugeCountsAsStillWithinTwoSteps() throws Exception {
    String text =
        ProfileSample.with("rule = \"rock\"", "rule = 'settle'")
            .replace("resolution_mm = 0.001", "resolution_mm = 0.0127");
    assertEquals(new PickSpec.Settle(0.8, 0.0254, 0.0508), ProfileSample.parse(text).pick());
  }

  @Test
  void fixedFrameMayBeNamedByTextOrHex() throws Exception {
    assertEquals(
        new FrameSpec.Fixed(8, Bytes.ofHex("02"), Bytes.ofHex("0d")),
        frame("kind = 'fixed'\nbytes = 8\nstarts_with_hex = '02'\nends_with = \"\\r\""));
    assertEquals(
        new FrameSpec.Fixed(8, Bytes.ofHex("58"), Bytes.EMPTY),
        frame("kind = 'fixed'\nbytes = 8\nstarts_with = 'X'"));
    assertEquals(
        new FrameSpec.Fixed(1, Bytes.EMPTY, Bytes.EMPTY), frame("kind = 'fixed'\nbytes = 1"));
  }

  @Test
  void endingMayBeGivenInHex() throws Exception {
    assertEquals(
        new FrameSpec.Delimited(Bytes.ofHex("FF03"), 3),
        frame("kind = 'line'\nends_with_hex = 'ff03'\nmax_bytes = 3"));
  }

  @Test
  void stopBitsMayBeOneAndAHalf() throws Exception {
    LineSettings line =
        ProfileSample.parse(ProfileSample.with("stop_bits = 2", "stop_bits = 1.5")).line();
    assertEquals(LineSettings.StopBits.ONE_AND_A_HALF, line.stopBits());
  }
}
