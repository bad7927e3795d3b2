package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A gauge on one port and a foot switch on another. */
@Timeout(180)
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo-terminals made by socat")
class FootSwitchTest {
  private static final Position THRUST = new Bore(1, 12, "thrust");
  private static final Position PIN = new Bore(1, 12, "pin");

  @TempDir Path folder;
  private BenchFolder bench;
  private Path job;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
    job = bench.job(SmallJob.atOneDepth());
  }

  @Test
  void threePedalsOfOnePortReadTakeBackAndSkipAndSurviveBeingUnplugged() throws Exception {
    Path gauge = bench.gauge(asked());
    TwoWayPty foot = TwoWayPty.at(folder.resolve("foot"));
    try (TwoWayPty line = TwoWayPty.at(folder.resolve("line"))) {
      String port = foot.port().toString();
      RunningCommand capture =
          capture(gauge, line, port + "=A:read", port + "=B:back", port + "=C:skip");
      capture.tells("next: setting ring, opening check");

      read(capture, line, foot, "+0.000", "taken 1 of 4: setting ring, opening check");
      read(capture, line, foot, "+0.028", "taken 2 of 4: cylinder 1, 12 mm below the deck, thrust");
      foot.send("B\r");
      capture.tells("taken back: cylinder 1, 12 mm below the deck, thrust axis, +0.0280 mm");
      foot.send("B\n");
      capture.tells("restored: cylinder 1, 12 mm below the deck, thrust axis, +0.0280 mm");
      foot.send("B\r\n");
      capture.tells("taken back: ");
      foot.send("C\r\n");
      capture.tells("skipped: cylinder 1, 12 mm below the deck, thrust axis");
      read(capture, line, foot, "+0.022", "taken 2 of 4: cylinder 1, 12 mm below the deck, pin");
      foot.close();
      capture.tells("note: foot switch: ");
      foot = TwoWayPty.at(folder.resolve("foot"));
      assertTrue(capture.tells("note: foot switch: ").endsWith(": it is back"));
      read(capture, line, foot, "+0.029", "taken 3 of 4: cylinder 1, 12 mm below the deck, thrust");
      foot.send("rust\r");
      assertTrue(
          capture.tells("note: foot switch: ").endsWith("sent \"rust\", which is no pedal's"));
      read(capture, line, foot, "+0.001", "taken 4 of 4: setting ring, closing check");

      assertEquals(0, capture.ends());
    } finally {
      foot.close();
    }
    StoredSession stored = stored();
    assertEquals(List.of(SettingCheck.OPENING, PIN, THRUST, SettingCheck.CLOSING), places(stored));
    assertEquals("foot switch pressed", stored.takenBack().get(0).by().why());
    assertTrue(stored.ended());
    assertEquals(List.of(), stored.refused());
    assertTrue(
        Ran.command("audit", "--ledger", bench.ledger(), "--json")
            .ended(0)
            .json()
            .path("intact")
            .asBoolean());
  }

  @Test
  void onePedalConfirmsTheValueThatIsHeldAndAGaugeThatCannotBeAskedSaysSo() throws Exception {
    Path gauge = bench.gauge(SmallGauge.deviation());
    try (TwoWayPty line = TwoWayPty.at(folder.resolve("line"));
        TwoWayPty yes = TwoWayPty.at(folder.resolve("yes"));
        TwoWayPty now = TwoWayPty.at(folder.resolve("now"))) {
      RunningCommand capture = capture(gauge, line, yes.port() + "=confirm", now.port() + "=read");
      capture.tells("next: ");
      yes.send("anything\r");
      capture.tells("not done: no held value waits for an answer");
      now.send("\r");
      capture.tells("not done: the gauge cannot be asked: its profile has no [ask]");
      line.send("+0.000\n-0.600\n");
      capture.tells("refused: bore 95.4020 mm is outside");
      yes.send("anything\r");
      capture.tells("taken 2 of 4: cylinder 1, 12 mm below the deck, thrust axis, -0.6000 mm");
      line.send("+0.022\n+0.001\n");

      assertEquals(1, capture.ends(), "the confirmed value asks for attention");
    }
    assertEquals(-0.6, stored().at(THRUST).orElseThrow().reading().valueMm());
  }

  @Test
  void aSwitchThatCannotBeIsRefusedBeforeTheLedgerIsMade() {
    Path gauge = bench.gauge(SmallGauge.deviation());
    try (TwoWayPty line = TwoWayPty.at(folder.resolve("line"))) {
      refused(
          gauge,
          line,
          2,
          "--switch: a gauge and a switch cannot share the port " + line.port(),
          line.port() + "=back");
      refused(
          gauge,
          line,
          2,
          "--switch: two actions for /dev/x sending A",
          "/dev/x=A:back",
          "/dev/x=A:skip");
      refused(gauge, line, 2, "'jump' is not one of read, back, skip, confirm, leave", "x=jump");
      refused(gauge, line, 2, "'x' is not PORT=ACTION or PORT=TEXT:ACTION", "x");
      refused(gauge, line, 2, "--switch: ", "tcp://nowhere=back");
      refused(gauge, line, 3, folder.resolve("none").toString(), folder.resolve("none") + "=back");
    }
    assertFalse(Files.exists(bench.ledger()));
  }

  /** The pedal A is pressed, the gauge is asked, and answers. */
  private static void read(
      RunningCommand capture, TwoWayPty line, TwoWayPty foot, String value, String then)
      throws InterruptedException {
    foot.send("A\r\n");
    capture.tells("asked: ");
    assertEquals('?', line.hear());
    line.send(value + "\n");
    capture.tells(then);
  }

  private void refused(Path gauge, TwoWayPty line, int status, String why, String... pedals) {
    Ran ran = Ran.command(words(gauge, line, pedals).toArray()).refused(status);
    assertTrue(ran.err().contains(why), ran::err);
  }

  private RunningCommand capture(Path gauge, TwoWayPty line, String... pedals) {
    return RunningCommand.started(words(gauge, line, pedals).toArray());
  }

  private List<Object> words(Path gauge, TwoWayPty line, String... pedals) {
    List<Object> words =
        new ArrayList<>(List.of("capture", "--job", job, "--gauge", gauge, "--port", line.port()));
    words.addAll(List.of("--measure", "bore", "--ledger", bench.ledger()));
    words.addAll(List.of("--setting-temp", "20", "--block-temp", "20"));
    for (String pedal : pedals) {
      words.addAll(List.of("--switch", pedal));
    }
    return words;
  }

  private static SmallGauge asked() {
    return SmallGauge.deviation().with("[frame]", "[ask]\nsend = \"?\"\non = \"trigger\"\n[frame]");
  }

  private static List<Position> places(StoredSession stored) {
    return stored.readings().stream().map(StoredSession.StoredReading::position).toList();
  }

  private StoredSession stored() throws Exception {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return StoredSession.all(view).get(0);
    }
  }
}
