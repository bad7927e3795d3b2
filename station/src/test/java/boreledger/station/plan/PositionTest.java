package boreledger.station.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.plan.Position.RingDepth;
import boreledger.station.plan.Position.SettingCheck;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PositionTest {
  @Test
  void everyPlaceIsTheSameWordsAtTheBenchAndInAMessage() {
    assertEquals("setting ring, opening check", SettingCheck.OPENING.words());
    assertEquals(
        "cylinder 2, 60 mm below the deck, thrust axis", new Bore(2, 60, "thrust").words());
    assertEquals(
        "cylinder 1, top ring gap, 12.5 mm below the deck", new Gap(1, "top", 12.5).words());
    assertEquals(
        "cylinder 3, top ring near 12 mm below the deck, clock 22.5°",
        new RingDepth(3, "top", 12, 22.5).words());
  }

  @Test
  void depthsKeepTheirDecimalPointInEveryLocale() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertEquals(
          "cylinder 1, 12.7 mm below the deck, pin axis", new Bore(1, 12.7, "pin").words());
    } finally {
      Locale.setDefault(before);
    }
  }
}
