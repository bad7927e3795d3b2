package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.truth.PumphouseThree;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A port that cannot be used, and a start that is refused before the port matters. */
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo terminals made by socat")
class PortFaultsIT {
  private final Launcher program = Launcher.process();

  @TempDir Path folder;
  private LiveBench bench;

  @BeforeEach
  void setUp() {
    bench = new LiveBench(folder, PumphouseThree.fresh());
  }

  @Test
  void aMissingPortIsAFailedLineAndMakesNoLedger() {
    String port = folder.resolve("no-such-port").toString();
    String message = assertNothingMade(bench.bore(port, "bench.ledger"), 3);
    assertTrue(message.contains("no-such-port"), message);
  }

  @Test
  void aFileThatIsNoPortIsAFailedLineAndMakesNoLedger() {
    bench.bundle().write("letter", "no port\n");
    assertNothingMade(bench.bore(bench.bundle().path("letter"), "bench.ledger"), 3);
  }

  @Test
  void aBusyPortIsAFailedLineAndMakesNoLedger() {
    try (Cable cable = Cable.lay(folder, "gauge");
        Running first = LiveBench.start(folder, bench.bore(cable.port(), "first.ledger"), cable)) {
      LiveBench.press(first, cable, "+0.000000\r\n");
      String message = assertNothingMade(bench.bore(cable.port(), "second.ledger"), 3);
      assertTrue(message.contains("gauge"), message);
      LiveBench.press(first, cable, "+0.010000\r\n");
    }
  }

  @Test
  void aBadJobIsRefusedBeforeThePortIsTouched() {
    int line = bench.bundle().edit("engine.job.toml", "taper_max_mm", "taper_maks_mm");
    String port = folder.resolve("no-such-port").toString();
    String message = assertNothingMade(bench.bore(port, "bench.ledger"), 2);
    assertTrue(message.contains("engine.job.toml:" + line), message);
  }

  @Test
  void aRingThatTheJobDoesNotHaveIsRefused() {
    String port = folder.resolve("no-such-port").toString();
    String message = assertNothingMade(bench.gap(port, "third", "bench.ledger"), 2);
    assertTrue(message.contains("third"), message);
  }

  private String assertNothingMade(List<String> args, int exit) {
    TreeSet<String> before = bench.bundle().names();
    String message = program.run(args).refused(exit);
    assertEquals(before, bench.bundle().names(), "nothing is created when the start is refused");
    return message;
  }
}
