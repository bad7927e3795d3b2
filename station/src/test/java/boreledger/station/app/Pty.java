package boreledger.station.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A pseudo-terminal made by socat: what is sent here arrives at the port. */
public final class Pty implements AutoCloseable {
  private final Process socat;
  private final Path port;

  private Pty(Process socat, Path port) {
    this.socat = socat;
    this.port = port;
  }

  /** A terminal whose port appears in the folder. */
  public static Pty in(Path folder) {
    Path port = folder.resolve("port");
    try {
      Process socat =
          new ProcessBuilder("socat", "-d", "-d", "-u", "STDIN", "pty,raw,echo=0,link=" + port)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      BufferedReader said =
          new BufferedReader(new InputStreamReader(socat.getErrorStream(), StandardCharsets.UTF_8));
      String line = said.readLine();
      while (line != null && !line.contains("starting data transfer loop")) {
        line = said.readLine();
      }
      if (line == null) {
        throw new AssertionError("socat made no port " + port);
      }
      return new Pty(socat, port);
    } catch (IOException e) {
      throw new UncheckedIOException("socat is needed for these tests", e);
    }
  }

  /** Its path. */
  public String port() {
    return port.toString();
  }

  /** Sends all bytes at once. */
  public void send(String latin1) {
    try {
      socat.getOutputStream().write(latin1.getBytes(StandardCharsets.ISO_8859_1));
      socat.getOutputStream().flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Pulls the cable. */
  @Override
  public void close() {
    socat.destroy();
    socat.onExit().join();
  }
}
