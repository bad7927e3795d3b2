package boreledger.station.bench.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import boreledger.station.bench.look.Surroundings;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trial whose port takes its time to open. */
class TrialTest {
  private static final Path GAUGE = Path.of("ascii-line-size");

  @TempDir Path folder;
  private final FakeStart program = new FakeStart();
  private final Queue<Runnable> background = new ArrayDeque<>();
  private Trial trial;

  @BeforeEach
  void aBackgroundThatWaits() {
    Surroundings own = House.empty(folder).around();
    trial =
        new Trial(
            program,
            new Surroundings(
                own.workshop(),
                own.results(),
                own.appearance(),
                background::add,
                own.screen(),
                own.go()));
  }

  @Test
  void onePortIsFreedWhenAnotherWasWishedForMeanwhile() {
    trial.start(GAUGE, "/dev/ttyUSB0");
    trial.start(GAUGE, "/dev/ttyUSB1");
    background.remove().run();

    assertEquals(List.of("stopped"), program.listened);
    assertEquals(1, trial.lines().size(), "the first one's lines are of no interest");

    background.remove().run();
    assertEquals(List.of("stopped"), program.listened);
    assertEquals(3, trial.lines().size());
    assertTrue(trial.listening().get());
  }

  @Test
  void aFailureOfOneThatWasEndedDoesNotEndTheNext() {
    trial.start(GAUGE, "/dev/ttyUSB0");
    trial.start(GAUGE, "/dev/ttyUSB1");
    program.refusal = "serial port /dev/ttyUSB0: there is no such port";
    background.remove().run();

    assertTrue(trial.listening().get());
    assertEquals(1, trial.lines().size());
  }
}
