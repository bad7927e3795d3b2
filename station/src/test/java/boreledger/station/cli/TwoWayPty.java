package boreledger.station.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A pseudo-terminal made by socat whose other end both sends and hears. */
final class TwoWayPty implements AutoCloseable {
  private final Process socat;
  private final Path port;

  private TwoWayPty(Process socat, Path port) {
    this.socat = socat;
    this.port = port;
  }

  /** A terminal whose port appears at this path. */
  static TwoWayPty at(Path port) {
    try {
      Process socat =
          new ProcessBuilder("socat", "-d", "-d", "STDIO", "pty,raw,echo=0,link=" + port).start();
      BufferedReader said =
          new BufferedReader(new InputStreamReader(socat.getErrorStream(), StandardCharsets.UTF_8));
      String line = said.readLine();
      while (line != null && !line.contains("starting data transfer loop")) {
        line = said.readLine();
      }
      if (line == null) {
        throw new AssertionError("socat made no port " + port);
      }
      return new TwoWayPty(socat, port);
    } catch (IOException e) {
      throw new UncheckedIOException("socat is needed for these tests", e);
    }
  }

  Path port() {
    return port;
  }

  /** Sends all bytes at once. */
  void send(String latin1) {
    try {
      socat.getOutputStream().write(latin1.getBytes(StandardCharsets.ISO_8859_1));
      socat.getOutputStream().flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Waits for the next byte that the program sent. */
  char hear() {
    try {
      int heard = socat.getInputStream().read();
      if (heard < 0) {
        throw new AssertionError("the port was taken away");
      }
      return (char) heard;
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
