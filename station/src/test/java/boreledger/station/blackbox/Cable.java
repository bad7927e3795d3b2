package boreledger.station.blackbox;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;

/**
 * A pseudo terminal that stands in for a gauge's cable: what is sent here arrives at the port. The
 * port stays while the program comes and goes; closing pulls the cable.
 */
final class Cable implements AutoCloseable {
  private final Process socat;
  private final Path port;
  private final OutputStream gauge;

  private Cable(Process socat, Path port) {
    this.socat = socat;
    this.port = port;
    gauge = socat.getOutputStream();
  }

  /** Lays a cable whose port appears in the folder under this name. */
  static Cable lay(Path folder, String name) {
    Path port = folder.resolve(name);
    try {
      Process socat =
          new ProcessBuilder("socat", "-u", "STDIN", "pty,raw,echo=0,link=" + port)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!Watched.within(Duration.ofSeconds(10), () -> Files.exists(port))) {
        socat.destroyForcibly();
        throw new AssertionError("socat made no port " + port);
      }
      return new Cable(socat, port);
    } catch (IOException e) {
      throw new UncheckedIOException("socat is needed for these tests", e);
    }
  }

  String port() {
    return port.toString();
  }

  /** Sends all bytes at once. */
  void send(String latin1) {
    try {
      gauge.write(latin1.getBytes(StandardCharsets.ISO_8859_1));
      gauge.flush();
    } catch (IOException e) {
      throw new UncheckedIOException("the cable broke", e);
    }
  }

  /** Whether the process holds the port open. */
  boolean isOpenIn(long pid) {
    try (Stream<Path> open = Files.list(Path.of("/proc/" + pid + "/fd"))) {
      Path terminal = port.toRealPath();
      return open.anyMatch(link -> leadsTo(link, terminal));
    } catch (IOException | UncheckedIOException e) {
      return false; // the process has ended, or closed something while it was listed
    }
  }

  private static boolean leadsTo(Path link, Path terminal) {
    try {
      return Files.readSymbolicLink(link).equals(terminal);
    } catch (IOException e) {
      return false; // closed since it was listed
    }
  }

  @Override
  public void close() {
    socat.destroy(); // asked kindly, it takes its link away
    if (!Watched.within(Duration.ofSeconds(5), () -> !socat.isAlive())) {
      socat.destroyForcibly();
    }
  }
}
