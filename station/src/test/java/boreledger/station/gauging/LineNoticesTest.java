package boreledger.station.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.gauging.GaugingEvent.Noticed;
import boreledger.station.session.Outcome;
import boreledger.station.session.SmallGauge;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class LineNoticesTest {
  private static final String CHANGED =
      "the gauge went from mm to in in the middle of the session; check that its setting still"
          + " holds";
  private static final String UNREAD =
      "8 frames in a row could not be read: the baud rate, the parity or the gauge profile may be"
          + " wrong";
  private static final SmallGauge TALKATIVE =
      SmallGauge.deviation()
          .with(
              "(?<value>[+-]?\\d+\\.\\d+)$",
              "(?:(?<value>[+-]?\\d+\\.\\d+)(?<unit>in|mm)?(?<hold>H)?(?<low_battery>B)?"
                  + "|(?<out_of_range>OVER))$");

  @TempDir Path folder;
  private RunOnAScript bench;

  @BeforeEach
  void openASession() throws Exception {
    bench = new RunOnAScript(folder, TALKATIVE);
  }

  @AfterEach
  void closeTheLedger() throws Exception {
    bench.close();
  }

  @Test
  void aUnitThatChangesIsToldAndIsACautionOfTheNextReading() throws Exception {
    bench.line.says(1, "+0.001mm\n+0.021mm\n").says(2, "+0.0007in\n+0.0000in\n");

    bench.live().run();

    assertEquals(List.of(CHANGED), noticed());
    assertEquals(List.of(List.of(), List.of(), List.of(CHANGED), List.of()), cautions());
    assertEquals(0.01778, bench.stored().readings().get(2).reading().valueMm(), 1e-12);
    assertEquals(List.of(CHANGED), bench.stored().readings().get(2).reading().cautions());
  }

  @Test
  void aReadingRefusedInTheNewUnitDoesNotUseTheCautionUp() throws Exception {
    bench.line.says(1, "+0.001mm\n+0.021mm\n").says(2, "-9.0000in\n+0.0007in\n").ends(3);

    bench.live().run();

    assertEquals(List.of(List.of(), List.of(), List.of(CHANGED)), cautions());
  }

  @Test
  void recordedBytesAreNotWatched() throws Exception {
    bench.line.says(1, "+0.001mm\n+0.0007in\n" + "rust\n".repeat(9)).ends(2);

    bench.recorded().run();

    assertEquals(List.of(), noticed());
    assertEquals(List.of(List.of(), List.of()), cautions());
  }

  @Test
  void eightUnreadFramesInARowAreToldOnceUntilAValueComes() throws Exception {
    bench.line.says(1, "rust\n".repeat(20)).says(2, "+0.001mm\n").says(3, "rust\n".repeat(8));
    bench.line.ends(4);

    bench.live().run();

    assertEquals(List.of(UNREAD, UNREAD), noticed());
  }

  @Test
  void sevenUnreadFramesAroundAValueAreNotTold() throws Exception {
    bench.line.says(1, "rust\n".repeat(7) + "+0.001mm\n" + "rust\n".repeat(7)).ends(4);

    bench.live().run();

    assertEquals(List.of(), noticed());
  }

  @Test
  void gaugeOutOfRangeIsRefusedInItsWordsAndIsNotTakenForAWrongProfile() throws Exception {
    bench.line.says(1, "OVER\n".repeat(9)).ends(2);

    bench.live().run();

    assertEquals(List.of(), noticed());
    assertEquals(9, bench.outcomes().size());
    for (Outcome outcome : bench.outcomes()) {
      assertEquals(
          "the gauge says that its value is out of range", ((Outcome.Refused) outcome).why());
    }
  }

  @Test
  void heldDisplayAndLowBatteryAreCautionsOfTheReading() throws Exception {
    bench.line.says(1, "+0.001mmH\n").says(2, "+0.021mmB\n").ends(3);

    bench.live().run();

    List<List<String>> expected =
        List.of(
            List.of("the gauge is on hold: its value may be of an earlier place"),
            List.of("the gauge says that its battery is low"));
    assertEquals(expected, cautions());
    assertEquals(
        expected,
        bench.stored().readings().stream().map(stored -> stored.reading().cautions()).toList());
  }

  private List<String> noticed() {
    return bench.told.stream()
        .flatMap(
            event -> event instanceof Noticed noticed ? Stream.of(noticed.what()) : Stream.of())
        .toList();
  }

  private List<List<String>> cautions() {
    return bench.outcomes().stream()
        .flatMap(each -> each instanceof Outcome.Taken taken ? Stream.of(taken.cautions()) : null)
        .toList();
  }
}
