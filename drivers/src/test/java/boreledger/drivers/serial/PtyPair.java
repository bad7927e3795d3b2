package boreledger.drivers.serial;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * Two pseudo-terminals joined by socat, which stand in for a cable: what is written to one end
 * comes out of the other.
 */
final class PtyPair implements AutoCloseable {
  final Path gaugeEnd;
  final Path stationEnd;
  private final Process socat;

  private PtyPair(Path gaugeEnd, Path stationEnd, Process socat) {
    this.gaugeEnd = gaugeEnd;
    this.stationEnd = stationEnd;
    this.socat = socat;
  }

  /** Lays a cable; the test is skipped where socat is not installed. */
  static PtyPair in(Path folder) throws IOException {
    Path gaugeEnd = folder.resolve("gauge");
    Path stationEnd = folder.resolve("station");
    String options = "pty,raw,echo=0,link=";
    Process socat = start("socat", "-d", "-d", options + gaugeEnd, options + stationEnd);
    BufferedReader says = new BufferedReader(new InputStreamReader(socat.getErrorStream()));
    String line = says.readLine();
    while (line != null && !line.contains("starting data transfer")) {
      line = says.readLine();
    }
    if (line == null) {
      throw new IOException("socat ended before it joined the terminals");
    }
    return new PtyPair(gaugeEnd, stationEnd, socat);
  }

  private static Process start(String... command) {
    try {
      return new ProcessBuilder(command).start();
    } catch (IOException e) {
      Assumptions.abort("needs " + command[0] + ": " + e.getMessage());
      throw new AssertionError(e);
    }
  }

  /** Sends from the gauge's end. */
  void send(byte[] bytes) throws IOException {
    Files.write(gaugeEnd, bytes);
  }

  /** Pulls the cable out; it is out when this returns. */
  void pull() {
    socat.destroy();
    socat.onExit().orTimeout(10, TimeUnit.SECONDS).join();
  }

  @Override
  public void close() {
    pull();
  }
}
