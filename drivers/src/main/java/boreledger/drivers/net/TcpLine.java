package boreledger.drivers.net;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.line.ReconnectingLine;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.StandardSocketOptions;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import jdk.net.ExtendedSocketOptions;

/**
 * A TCP connection to a serial device server that passes plain bytes.
 *
 * <ul>
 *   <li>The server sets its own serial port: a profile's {@code [line]} has no say here.
 *   <li>A connection whose other end fell silently from the network is found out by the system's
 *       keep-alive, after some 20 s where the system lets that be set.
 *   <li>After {@link #close()}, from whichever thread, it is at its end.
 * </ul>
 */
public final class TcpLine implements Line {
  private static final int BUFFER_BYTES = 4096;
  private static final int CONNECT_TIMEOUT_MS = 1000;
  private static final int KEEP_ALIVE_IDLE_S = 8;
  private static final int KEEP_ALIVE_EVERY_S = 4;
  private static final int KEEP_ALIVE_TRIES = 3;

  private final Socket socket;
  private final String name;
  private final DoubleSupplier clockS;
  private final byte[] buffer = new byte[BUFFER_BYTES];
  private volatile boolean closed;

  private TcpLine(Socket socket, String name, DoubleSupplier clockS) {
    this.socket = socket;
    this.name = name;
    this.clockS = clockS;
  }

  /**
   * Connects.
   *
   * @param clockS a monotonic clock in seconds, by which the events are timed
   * @throws LineFault if nobody answers there within a second
   */
  public static TcpLine open(TcpAddress address, DoubleSupplier clockS) throws LineFault {
    String name = nameOf(address);
    Socket socket = new Socket();
    try {
      socket.connect(new InetSocketAddress(address.host(), address.port()), CONNECT_TIMEOUT_MS);
      socket.setTcpNoDelay(true);
      keepAlive(socket);
      return new TcpLine(socket, name, clockS);
    } catch (IOException e) {
      closeQuietly(socket);
      throw new LineFault(name + ": could not be connected, " + reason(e), e);
    }
  }

  /**
   * Connects, and connects anew whenever the connection is lost.
   *
   * @throws LineFault if nobody answers there now
   */
  public static Line lasting(TcpAddress address, DoubleSupplier clockS) throws LineFault {
    return new ReconnectingLine(open(address, clockS), () -> tryOpen(address, clockS), clockS);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public LineEvent read(Duration timeout) throws LineFault {
    try {
      if (!closed) {
        socket.setSoTimeout((int) Math.max(1, Math.min(timeout.toMillis(), Integer.MAX_VALUE)));
        int count = socket.getInputStream().read(buffer);
        if (count > 0) {
          return new LineEvent.Chunk(clockS.getAsDouble(), Bytes.of(buffer, 0, count));
        }
      }
    } catch (SocketTimeoutException e) {
      return new LineEvent.Quiet(clockS.getAsDouble());
    } catch (IOException e) {
      if (!closed) {
        throw new LineFault(name + ": the connection broke, " + reason(e), e);
      }
    }
    if (closed) {
      return new LineEvent.End(clockS.getAsDouble());
    }
    throw new LineFault(name + ": the other end closed the connection; start again to go on");
  }

  @Override
  public void send(Bytes request) throws LineFault {
    try {
      socket.getOutputStream().write(request.toArray());
    } catch (IOException e) {
      throw new LineFault(name + ": could not be written to, " + reason(e), e);
    }
  }

  @Override
  public void close() {
    closed = true;
    closeQuietly(socket);
  }

  private static String nameOf(TcpAddress address) {
    return "network port " + address;
  }

  private static Optional<Line> tryOpen(TcpAddress address, DoubleSupplier clockS) {
    try {
      return Optional.of(open(address, clockS));
    } catch (LineFault notThere) {
      return Optional.empty();
    }
  }

  private static void keepAlive(Socket socket) throws IOException {
    socket.setOption(StandardSocketOptions.SO_KEEPALIVE, true);
    if (socket.supportedOptions().contains(ExtendedSocketOptions.TCP_KEEPIDLE)) {
      socket.setOption(ExtendedSocketOptions.TCP_KEEPIDLE, KEEP_ALIVE_IDLE_S);
      socket.setOption(ExtendedSocketOptions.TCP_KEEPINTERVAL, KEEP_ALIVE_EVERY_S);
      socket.setOption(ExtendedSocketOptions.TCP_KEEPCOUNT, KEEP_ALIVE_TRIES);
    }
  }

  private static String reason(IOException e) {
    if (e instanceof UnknownHostException) {
      return "there is no such host; check its name";
    } else if (e instanceof SocketTimeoutException) {
      return "nobody answered; is the device server on and on this network?";
    }
    return e.getMessage() + "; is the device server on, and is this its port?";
  }

  private static void closeQuietly(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      // Nothing more can be done with it, and nothing was promised to be written.
    }
  }
}
