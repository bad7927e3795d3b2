package boreledger.drivers.net;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.LineContract;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class TcpLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(100);
  private static final DoubleSupplier CLOCK_S = () -> System.nanoTime() * 1e-9;

  private ServerSocket server;

  @BeforeEach
  void listen() throws IOException {
    server = listening(0);
  }

  @AfterEach
  void stopListening() throws IOException {
    server.close();
  }

  private static ServerSocket listening(int port) throws IOException {
    ServerSocket listening = new ServerSocket();
    listening.setReuseAddress(true);
    listening.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
    return listening;
  }

  private TcpAddress address() {
    return new TcpAddress(server.getInetAddress().getHostAddress(), server.getLocalPort());
  }

  private static void send(Socket gauge, String hex) throws IOException {
    gauge.getOutputStream().write(Bytes.ofHex(hex).toArray());
  }

  private static LineEvent news(Line line) throws LineFault {
    LineEvent event = line.read(TIMEOUT);
    while (event instanceof LineEvent.Quiet) {
      event = line.read(TIMEOUT);
    }
    return event;
  }

  private static Bytes bytes(Line line) throws LineFault {
    return assertInstanceOf(LineEvent.Chunk.class, news(line)).bytes();
  }

  @Test
  void bytesOfTheServerAreTheLines() throws Exception {
    try (Line line = TcpLine.open(address(), CLOCK_S);
        Socket gauge = server.accept()) {
      send(gauge, "2b30ff0d0a");
      assertEquals(Bytes.ofHex("2b30ff0d0a"), bytes(line));
      assertInstanceOf(LineEvent.Quiet.class, line.read(TIMEOUT));
    }
  }

  @Test
  void requestReachesTheServer() throws Exception {
    try (Line line = TcpLine.open(address(), CLOCK_S);
        Socket gauge = server.accept()) {
      line.send(Bytes.ofHex("3f0d"));
      assertArrayEquals(new byte[] {0x3f, 0x0d}, gauge.getInputStream().readNBytes(2));
    }
  }

  @Test
  void closedConnectionIsAFault() throws Exception {
    try (Line line = TcpLine.open(address(), CLOCK_S)) {
      server.accept().close();
      assertEquals(
          "network port "
              + address()
              + ": the other end closed the connection; start again to go on",
          assertThrows(LineFault.class, () -> news(line)).getMessage());
    }
  }

  @Test
  void resetConnectionIsAFault() throws Exception {
    try (Line line = TcpLine.open(address(), CLOCK_S)) {
      Socket gauge = server.accept();
      gauge.setSoLinger(true, 0);
      gauge.close();
      assertThrows(LineFault.class, () -> news(line));
    }
  }

  @Test
  void nobodyListeningIsAFaultAtTheStart() throws Exception {
    server.close();
    String message =
        assertThrows(LineFault.class, () -> TcpLine.lasting(address(), CLOCK_S)).getMessage();
    assertTrue(message.startsWith("network port " + address() + ": could not be"), message);
    assertEquals(1, message.lines().count());
  }

  @Test
  void lostConnectionsAreMadeAnewAndNothingComesTwice() throws Exception {
    try (Line line = TcpLine.lasting(address(), CLOCK_S)) {
      for (int i = 0; i < 20; i++) {
        try (Socket gauge = server.accept()) {
          String hex = String.format("%02x0d0a", i);
          send(gauge, hex);
          assertEquals(Bytes.ofHex(hex), bytes(line));
        }
        assertInstanceOf(LineEvent.Gone.class, news(line));
        assertInstanceOf(LineEvent.Back.class, news(line));
      }
    }
  }

  @Test
  void serverThatWasAwayIsFoundWithinTwoSecondsOfItsReturn() throws Exception {
    int port = server.getLocalPort();
    try (Line line = TcpLine.lasting(address(), CLOCK_S)) {
      server.accept().close();
      server.close();
      assertInstanceOf(LineEvent.Gone.class, news(line));
      double goneS = CLOCK_S.getAsDouble();
      LineEvent event = line.read(TIMEOUT);
      while (event.tS() < goneS + 2.5) {
        assertInstanceOf(LineEvent.Quiet.class, event);
        event = line.read(TIMEOUT);
      }
      server = listening(port);
      double thereS = CLOCK_S.getAsDouble();
      LineEvent back = assertInstanceOf(LineEvent.Back.class, news(line));
      assertTrue(back.tS() - thereS < 2, "after " + (back.tS() - thereS) + " s");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"tcp://workshop:4001", "tcp://192.0.2.7:1", "tcp://[2001:db8::7]:65535"})
  void addressIsWrittenAsItIsRead(String text) {
    assertEquals(text, TcpAddress.parse(text).toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tcp://workshop",
        "tcp://workshop:0",
        "tcp://workshop:65536",
        "tcp://:4001",
        "tcp://workshop:4001/gauge",
        "tcp://me@workshop:4001",
        "tcp://workshop:port",
        "udp://workshop:4001",
        "tcp://work shop:4001"
      })
  void textThatIsNoAddressIsRefused(String text) {
    IllegalArgumentException problem =
        assertThrows(IllegalArgumentException.class, () -> TcpAddress.parse(text));
    assertEquals(
        "'" + text + "' is no network port, expected tcp://host:port, such as tcp://workshop:4001",
        problem.getMessage());
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() throws Exception {
      Line line = TcpLine.open(address(), CLOCK_S);
      send(server.accept(), "01020304");
      return line;
    }

    @Override
    protected Bytes content() {
      return Bytes.ofHex("01020304");
    }
  }
}
