package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.plan.Position.Bore;
import boreledger.station.rules.ReadingRules;
import boreledger.station.session.SmallGauge;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingAgainTest {
  /** {@code +0.028B} and a line feed: the gauge says that its battery is low. */
  private static final String LOW = "2b302e303238420a";

  private final ReadingAgain again =
      new ReadingAgain(SmallGauge.deviation().with("\\d+)$", "\\d+)(?<low_battery>B)?$").profile());

  @Test
  void aCautionThatWasLeftOutIsADifference() {
    List<String> differences = differences();

    assertEquals(1, differences.size(), differences::toString);
    assertEquals(
        "its caution is missing: ",
        differences.get(0).substring(0, "its caution is missing: ".length()));
  }

  @Test
  void aCautionThatAPersonsConfirmationAddedIsNone() {
    String battery = differences().get(0).substring("its caution is missing: ".length());

    assertEquals(List.of(), differences(battery, "confirmed at the bench although it is far off"));
  }

  private List<String> differences(String... cautions) {
    ReadingTaken reading =
        new ReadingTaken(
            7,
            new Bore(1, 12, "pin"),
            20.0,
            Instant.parse("2031-05-06T08:00:20Z"),
            0.028,
            null,
            "press",
            8L,
            List.of(new KeptSample(20.0, LOW, 0.028)),
            List.of(cautions));
    return again.differences(reading, ReadingRules.now());
  }
}
