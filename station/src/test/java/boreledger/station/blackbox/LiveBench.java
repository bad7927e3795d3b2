package boreledger.station.blackbox;

import boreledger.station.truth.Engine;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A bench with a gauge on a cable: starts {@code capture} and feeds it. */
final class LiveBench {
  /** Longer than a start, an open port and a commit take on a busy machine. */
  static final Duration PATIENCE = Duration.ofSeconds(30);

  private static final Duration ANSWER = Duration.ofSeconds(5);

  private final Bundle bundle;
  private final Engine engine;

  LiveBench(Path folder, Engine engine) {
    this.engine = engine;
    bundle = new Bundle(folder).withJob(engine);
    bundle.write("bore.gauge.toml", Bundle.lineProfile("deviation", "0.000001"));
    bundle.write("gap.gauge.toml", Bundle.lineProfile("size", "0.000001"));
  }

  Bundle bundle() {
    return bundle;
  }

  List<String> bore(String port, String ledger) {
    List<String> args = call("bore", "bore.gauge.toml", port, ledger);
    args.add("--setting-temp=" + engine.bench().settingTempC());
    args.add("--block-temp=" + engine.bench().blockTempC());
    return args;
  }

  List<String> gap(String port, String ring, String ledger) {
    List<String> args = call("gap", "gap.gauge.toml", port, ledger);
    args.addAll(List.of("--ring", ring));
    args.add("--block-temp=" + engine.bench().blockTempC());
    return args;
  }

  private List<String> call(String measure, String gauge, String port, String ledger) {
    return new ArrayList<>(
        List.of(
            "capture",
            "--json",
            "--job",
            bundle.path("engine.job.toml"),
            "--gauge",
            bundle.path(gauge),
            "--port",
            port,
            "--measure",
            measure,
            "--ledger",
            bundle.path(ledger)));
  }

  /** Starts and waits until the port is open. */
  static Running start(Path folder, List<String> args, Cable cable) {
    Running running = Running.start(folder, args);
    boolean open =
        Watched.within(PATIENCE, () -> cable.isOpenIn(running.pid()) || !running.isAlive());
    if (!open || !running.isAlive()) {
      running.close();
      throw new AssertionError("never opened its port: " + running);
    }
    return running;
  }

  /**
   * Sends one frame and waits until it is acknowledged. Bytes that arrive while a port is being set
   * up may be lost, as on a real cable: then the button is pressed again.
   */
  static void press(Running running, Cable cable, String frame) {
    int before = running.taken();
    for (int tries = 0; tries < 3; tries++) {
      cable.send(frame);
      if (running.awaitTaken(before + 1, ANSWER)) {
        return;
      }
    }
    throw new AssertionError("three presses of " + frame.strip() + " unanswered: " + running);
  }
}
