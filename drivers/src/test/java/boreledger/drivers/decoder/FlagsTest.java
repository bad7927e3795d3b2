package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a gauge says of its value besides, as bits or as text. */
class FlagsTest {
  private static final String BITS =
      """
      [frame]
      kind = 'fixed'
      bytes = 3
      [decode]
      kind = 'integer'
      at = 0
      bytes = 2
      byte_order = 'big'
      scale = 0.001
      [flags]
      hold = { at = 2, mask = 1 }
      low_battery = { at = 2, mask = 2 }
      out_of_range = { at = 2, mask = 4 }
      inch = { at = 2, mask = 8 }
      """;
  private static final String TEXT =
      """
      [frame]
      kind = 'line'
      ends_with = "\\n"
      max_bytes = 40
      [decode]
      pattern = '^(?:(?<value>[+-]?\\d+\\.\\d+) ?(?<unit>mm|in)?|(?<out_of_range>OVER))(?<hold> H)?(?<low_battery> B)?$'
      """;

  private static Decoded text(String sent) throws Exception {
    Bytes payload = Bytes.of(sent.getBytes(StandardCharsets.US_ASCII));
    return Decoders.of(Gauges.of(TEXT)).decode(new FrameEvent.Frame(0, payload, payload));
  }

  private static Decoded bits(String pick, String hex) throws Exception {
    return Gauges.decode(Gauges.of(BITS + "[pick]\nrule = '" + pick + "'\n"), hex);
  }

  private static String why(Decoded decoded) {
    return assertInstanceOf(Rejected.class, decoded).why();
  }

  @Test
  void frameWithoutFlagsHasNoCautions() throws Exception {
    Sample sample = assertInstanceOf(Sample.class, bits("press", "000100"));
    assertEquals(Set.of(), sample.flags());
    assertEquals(List.of(), sample.cautions());
  }

  @Test
  void lowBatteryIsACaution() throws Exception {
    Sample sample = assertInstanceOf(Sample.class, bits("rock", "000102"));
    assertEquals(Set.of(Flag.LOW_BATTERY), sample.flags());
    assertEquals(List.of("the gauge says that its battery is low"), sample.cautions());
    assertEquals(0.001, sample.valueMm());
  }

  @ParameterizedTest
  @ValueSource(strings = {"press", "settle", "rock"})
  void valueOutOfRangeIsRefused(String pick) throws Exception {
    assertEquals("the gauge says that its value is out of range", why(bits(pick, "000107")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"settle", "rock"})
  void heldValueIsRefusedWhereSamplesFollowEachOther(String pick) throws Exception {
    assertEquals(
        "the gauge is on hold: its value may be of an earlier place", why(bits(pick, "000101")));
  }

  @Test
  void heldValueSentByAPressIsASampleWithACaution() throws Exception {
    Sample sample = assertInstanceOf(Sample.class, bits("press", "000103"));
    assertEquals(
        List.of(
            "the gauge is on hold: its value may be of an earlier place",
            "the gauge says that its battery is low"),
        sample.cautions());
  }

  @Test
  void inchBitWorksOutsideTheDecodeTableToo() throws Exception {
    Sample sample = assertInstanceOf(Sample.class, bits("press", "000108"));
    assertEquals(LengthUnit.IN, sample.unit());
    assertEquals(0.0254, sample.valueMm());
  }

  @Test
  void groupsOfAPatternRaiseFlags() throws Exception {
    Sample sample = assertInstanceOf(Sample.class, text("+1.25 mm H B"));
    assertEquals(Set.of(Flag.HOLD, Flag.LOW_BATTERY), sample.flags());
    assertEquals(Set.of(), assertInstanceOf(Sample.class, text("+1.25")).flags());
  }

  @Test
  void outOfRangeNeedsNoValue() throws Exception {
    assertEquals("the gauge says that its value is out of range", why(text("OVER B")));
  }

  @Test
  void textAndBitsThatNameDifferentUnitsAreRefused() throws Exception {
    GaugeProfile profile = Gauges.of(TEXT + "[flags]\ninch = { at = 0, mask = 0x20 }\n");
    Bytes payload = Bytes.of("+1.25 in".getBytes(StandardCharsets.US_ASCII));
    Bytes other = Bytes.of("+1.25 mm".getBytes(StandardCharsets.US_ASCII));
    assertInstanceOf(
        Sample.class, Decoders.of(profile).decode(new FrameEvent.Frame(0, payload, payload)));
    assertEquals(
        "its text says mm, its bits say in",
        why(Decoders.of(profile).decode(new FrameEvent.Frame(0, other, other))));
  }
}
