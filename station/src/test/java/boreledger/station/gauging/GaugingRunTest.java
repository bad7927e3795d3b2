package boreledger.station.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.gauging.GaugingEvent.Began;
import boreledger.station.gauging.GaugingEvent.Live;
import boreledger.station.gauging.GaugingEvent.Over;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.Outcome;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class GaugingRunTest {
  @TempDir Path folder;
  private RunOnAScript bench;

  @BeforeEach
  void openASession() throws Exception {
    bench = new RunOnAScript(folder);
  }

  @AfterEach
  void closeTheLedger() throws Exception {
    bench.close();
  }

  @Test
  void aLiveRunIsOverWhenThePlanIsDoneAlthoughTheLineGoesOn() throws Exception {
    bench.line.says(1, "+0.001\n+0.021\n+0.018\n").says(2, "+0.001\n");

    Ending ending = bench.live().run();

    assertEquals(Ending.PLAN_DONE, ending);
    assertTrue(bench.stored().ended());
    assertTrue(bench.line.isClosed());
    assertEquals(new Over(Ending.PLAN_DONE, new Progress(null, 4, 4)), last());
  }

  @Test
  void theWatcherIsToldOfTheLineAndTheFirstPositionBeforeAnythingElse() throws Exception {
    bench.line.says(1, "+0.001\n").ends(2);

    bench.live().run();

    Began began = assertInstanceOf(Began.class, bench.told.get(0));
    assertEquals(bench.session.id(), began.session());
    assertFalse(began.resumed());
    assertEquals(List.of("the line is a script"), began.lineNotes());
    assertEquals(new Progress(SettingCheck.OPENING, 0, 4), began.progress());
  }

  @Test
  void everySampleIsShownBeforeWhatBecameOfIt() throws Exception {
    bench.line.says(1.5, "+0.001\n").ends(2);

    bench.live().run();

    Live live = assertInstanceOf(Live.class, bench.told.get(1));
    assertEquals(0.001, live.sample().valueMm());
    assertEquals(1.5, live.sample().tS());
    Said said = assertInstanceOf(Said.class, bench.told.get(2));
    assertEquals(SettingCheck.OPENING, ((Outcome.Taken) said.outcome()).position());
    assertEquals(new Progress(new Bore(1, 12, "thrust"), 1, 4), said.progress());
  }

  @Test
  void aLineThatEndsEarlyLeavesTheSessionToBeResumed() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, "+0.021\n").ends(3);

    assertEquals(Ending.LINE_ENDED, bench.recorded().run());

    assertFalse(bench.stored().ended());
    assertEquals(2, bench.stored().readings().size());
    assertEquals(new Over(Ending.LINE_ENDED, new Progress(new Bore(1, 12, "pin"), 2, 4)), last());
  }

  @Test
  void aLineThatEndsAtOnceTakesNothing() throws Exception {
    bench.line.ends(0);

    assertEquals(Ending.LINE_ENDED, bench.live().run());

    assertEquals(List.of(), bench.outcomes());
    assertEquals(List.of(), bench.stored().readings());
  }

  @Test
  void recordedBytesBeyondThePlansEndAreRefusedAndKept() throws Exception {
    bench.line.says(1, "+0.001\n+0.021\n").says(2, "+0.018\n+0.001\n").says(3, "+0.500\nrust\n+0");
    bench.line.ends(4);

    assertEquals(Ending.PLAN_DONE, bench.recorded().run());

    assertTrue(bench.stored().ended());
    List<SampleRefused> refused = bench.stored().refused();
    assertEquals(3, refused.size());
    assertEquals("every position of the plan has its reading", refused.get(0).why());
    assertEquals(0.5, refused.get(0).valueMm());
    assertNull(refused.get(1).valueMm());
    assertNull(((Outcome.Refused) bench.outcomes().get(4)).position());
  }

  @Test
  void everyRecordedByteIsInAReadingOrInARefusal() throws Exception {
    List<String> chunks =
        List.of("+0.0", "01\n+9.5\n", "\n+0.021\nrust", "+0.018\n+0.001\n+0.7\n+0");
    for (int i = 0; i < chunks.size(); i++) {
      bench.line.says(i, chunks.get(i));
    }
    bench.line.ends(9);

    bench.recorded().run();

    Stream<String> read =
        bench.stored().readings().stream()
            .flatMap(stored -> stored.reading().samples().stream())
            .map(KeptSample::raw);
    Stream<String> refused = bench.stored().refused().stream().map(SampleRefused::raw);
    assertEquals(
        sortedBytes(HexFormat.of().formatHex(bytes(String.join("", chunks)))),
        sortedBytes(Stream.concat(read, refused).collect(Collectors.joining())));
  }

  @Test
  void aFrameThatCannotBeReadUsesUpNoPosition() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, "rust\n").says(3, "+0.021\n").ends(4);

    bench.recorded().run();

    assertEquals(
        List.of(SettingCheck.OPENING, new Bore(1, 12, "thrust")),
        bench.stored().readings().stream().map(reading -> reading.position()).toList());
    assertEquals(1, bench.stored().refused().size());
    assertEquals(2, bench.stored().refused().get(0).tS());
  }

  @Test
  void aValueThatNoBoreCanHaveIsToldAsHeldAndUsesUpNoPosition() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, "+1.499\n").says(3, "+0.021\n").ends(4);

    bench.recorded().run();

    // 96.002 + 1.499 mm is above the largest oversize of 0.5 mm plus 1 mm.
    Outcome.Held held = assertInstanceOf(Outcome.Held.class, bench.outcomes().get(1));
    assertEquals(new Bore(1, 12, "thrust"), held.position());
    assertEquals(0.021, bench.stored().readings().get(1).reading().valueMm());
  }

  private GaugingEvent last() {
    return bench.told.get(bench.told.size() - 1);
  }

  private static byte[] bytes(String latin1) {
    return latin1.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static List<Integer> sortedBytes(String hex) {
    byte[] bytes = HexFormat.of().parseHex(hex);
    return Stream.iterate(0, i -> i < bytes.length, i -> i + 1)
        .map(i -> (int) bytes[i])
        .sorted()
        .toList();
  }
}
