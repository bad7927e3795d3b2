package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.truth.Noise;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A capture is killed again and again while a gauge feeds it in bursts. Every value on the line is
 * sent once and differs from all others, so that each position tells which frame it was given.
 */
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo terminals made by socat")
class KillIT {
  private static final int KILLS = Integer.getInteger("boreledger.kills", 50);
  private static final int AT_AN_ACKNOWLEDGEMENT = KILLS / 2;
  // A busy machine may hold up the kill at an acknowledgement: then it is done again.
  private static final int MOST_KILLS = KILLS + KILLS / 2 + 14;
  private static final long TWO_MS_IN_NANOS = 2_000_000;
  // Every wait is for an event; only something that hangs takes as long as this.
  private static final Duration HANGS = Duration.ofMinutes(10);

  private final Noise noise = new Noise(9050);
  // Long enough that places are left to gauge after the last kill.
  private final KillPlan plan = new KillPlan(MOST_KILLS);
  private final List<Long> entries = new ArrayList<>();

  @TempDir Path folder;
  private LiveBench bench;
  private int kills;
  private int killsAtAcknowledgement;
  private List<Integer> lastSeen = List.of();

  @Test
  void killsLoseNothingDoubleNothingAndGoOnAtTheNextPosition() {
    bench = new LiveBench(folder, plan.engine());
    try (Cable cable = Cable.lay(folder, "gauge")) {
      openingCheck(cable);
      while (kills < KILLS
          || killsAtAcknowledgement < AT_AN_ACKNOWLEDGEMENT && kills < MOST_KILLS) {
        killOnce(cable, kills % 2 == 0 || kills >= KILLS);
        if (kills % 10 == 0) {
          assertNothingLostOrDoubled();
        }
      }
    }
    assertNothingLostOrDoubled();
    assertTrue(killsAtAcknowledgement >= AT_AN_ACKNOWLEDGEMENT, "within 2 ms of one");
    try (Cable cable = Cable.lay(folder, "another-gauge")) {
      gaugeTheRest(cable);
    }
    List<Integer> beforeTheRest = lastSeen;
    assertNothingLostOrDoubled();
    assertEquals(plan.places(), lastSeen.size(), "every position");
    assertEquals(beforeTheRest, lastSeen.subList(0, beforeTheRest.size()), "what stood, stands");
    long chained = ChainCheck.entriesOf(Path.of(bench.bundle().ledger()));
    assertTrue(chained >= entries.size(), chained + " entries for " + entries);
  }

  private void openingCheck(Cable cable) {
    Running running = start(cable);
    press(running, cable, KillPlan.ZERO);
    running.kill();
    collect(running);
    entriesRise();
  }

  private void killOnce(Cable cable, boolean atAcknowledgement) {
    Running running = start(cable);
    if (atAcknowledgement) {
      int deadly = noise.between(1, 2);
      running.killAtTaken(deadly);
      cable.send(plan.burst(noise.between(deadly, 3)));
    } else {
      cable.send(plan.burst(noise.between(1, 2)));
      await(running, () -> running.taken() >= 1);
      cable.send(plan.burst(noise.between(1, 3)));
      LockSupport.parkNanos(noise.between(0, 3_000_000));
      running.kill();
    }
    collect(running);
    kills++;
    long nanos = running.nanosFromTakenToKill();
    killsAtAcknowledgement += nanos >= 0 && nanos < TWO_MS_IN_NANOS ? 1 : 0;
    entriesRise();
  }

  /** Sends a frame once: when a program gauges, nothing on its line is lost. */
  private static void press(Running running, Cable cable, String frame) {
    int before = running.taken();
    cable.send(frame);
    await(running, () -> running.taken() > before);
  }

  private static void await(Running running, BooleanSupplier happened) {
    Watched.within(HANGS, () -> happened.getAsBoolean() || !running.isAlive());
    if (!happened.getAsBoolean()) {
      running.close();
      throw new AssertionError("ended or hung without an answer: " + running);
    }
  }

  private Running start(Cable cable) {
    Running running = Running.start(folder, bench.bore(cable.port(), "bench.ledger"));
    await(running, running::hasBegun);
    return running;
  }

  private void collect(Running running) {
    Outcome outcome = running.end(HANGS);
    assertEquals(128 + 9, outcome.exit(), () -> "ended by the kill alone: " + outcome);
    entries.addAll(running.entries());
  }

  /** The ledger only grows: an entry number that comes again was lost in between. */
  private void entriesRise() {
    for (int i = 1; i < entries.size(); i++) {
      int at = i;
      assertTrue(entries.get(i) > entries.get(i - 1), () -> "entry " + at + " of " + entries);
    }
  }

  private void assertNothingLostOrDoubled() {
    JsonNode results =
        Launcher.process()
            .run("results", "--json", "--ledger", bench.bundle().ledger())
            .noTrace()
            .json();
    List<Integer> frames = plan.framesIn(results);
    int acknowledgedBores = entries.size() - 1;
    assertTrue(frames.size() >= acknowledgedBores, () -> frames + " for " + entries);
    for (int i = 1; i < frames.size(); i++) {
      assertTrue(frames.get(i) > frames.get(i - 1), () -> "a frame twice or late: " + frames);
    }
    assertEquals(lastSeen, frames.subList(0, lastSeen.size()), "what stood, stands");
    lastSeen = frames;
    assertIntact(frames.size());
  }

  /** Every entry stands as it was written, and every reading comes out of its bytes again. */
  private void assertIntact(int bores) {
    JsonNode audit =
        Launcher.process()
            .run("audit", "--json", "--ledger", bench.bundle().ledger())
            .ended(0)
            .json();
    assertTrue(audit.path("intact").asBoolean(), audit::toPrettyString);
    assertTrue(audit.path("recomputed").asInt() > bores, audit::toPrettyString);
    assertEquals(0, audit.path("differing").asInt());
  }

  /** One press at a time, on a fresh cable with nothing left on it, then the closing check. */
  private void gaugeTheRest(Cable cable) {
    int alreadyThere = lastSeen.size();
    assertTrue(alreadyThere < plan.places(), "the plan is long enough");
    try (Running running = start(cable)) {
      while (alreadyThere + running.taken() < plan.places()) {
        press(running, cable, plan.burst(1));
      }
      press(running, cable, KillPlan.ZERO);
      Outcome outcome = running.end(HANGS).noTrace();
      assertTrue(outcome.exit() == 0 || outcome.exit() == 1, outcome::toString);
      outcome.json();
      entries.addAll(running.entries().subList(0, running.taken() - 1));
      entriesRise();
    }
  }
}
