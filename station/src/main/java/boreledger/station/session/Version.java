package boreledger.station.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The program's version, whose rules compute. */
public final class Version {
  /** Such as {@code 0.1.0}. */
  public static final String PROGRAM = read();

  private Version() {}

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
