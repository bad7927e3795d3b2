package boreledger.drivers.net;

import java.net.URI;
import java.net.URISyntaxException;

/**
 * Where a serial device server listens, such as {@code tcp://workshop:4001}.
 *
 * @param host a name or an address; IPv6 without its brackets
 * @param port from 1 to 65535
 */
public record TcpAddress(String host, int port) {
  /** What the text of an address begins with. */
  public static final String SCHEME = "tcp://";

  private static final int LARGEST_PORT = 65_535;

  /**
   * Reads {@code tcp://host:port}.
   *
   * @throws IllegalArgumentException if the text is no such address; the message is one line
   */
  public static TcpAddress parse(String text) {
    try {
      URI uri = new URI(text);
      boolean bare =
          uri.getUserInfo() == null
              && (uri.getRawPath() == null || uri.getRawPath().isEmpty())
              && uri.getRawQuery() == null
              && uri.getRawFragment() == null;
      boolean tcp = "tcp".equals(uri.getScheme());
      boolean known = uri.getPort() >= 1 && uri.getPort() <= LARGEST_PORT;
      if (tcp && bare && known && uri.getHost() != null) {
        return new TcpAddress(uri.getHost().replaceAll("^\\[|]$", ""), uri.getPort());
      }
    } catch (URISyntaxException e) {
      // Falls through to the one message that says how it should look.
    }
    throw new IllegalArgumentException(
        "'" + text + "' is no network port, expected tcp://host:port, such as tcp://workshop:4001");
  }

  /** The text from which {@link #parse} reads the same again. */
  @Override
  public String toString() {
    return SCHEME + (host.contains(":") ? "[" + host + "]" : host) + ":" + port;
  }
}
