package boreledger.drivers.framer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.Crc;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ModbusRtuFramerTest {
  private static final String NO_FRAME = "no Modbus RTU message with a right CRC: ";

  private static List<String> cut(String hex) {
    Framer framer = Framers.of(new FrameSpec.ModbusRtu());
    return Wire.timeless(Wire.feed(framer, List.of(Bytes.ofHex(hex.replace(" ", "")))));
  }

  /** A message with its CRC, which the published ones check. */
  private static Bytes withCrc(String hex) {
    Bytes body = Bytes.ofHex(hex);
    int crc = (int) Crc.MODBUS.of(body);
    return body.plus(Bytes.of(new byte[] {(byte) crc, (byte) (crc >>> 8)}));
  }

  @Test
  void picturedStreamIsCutAsPictured() {
    assertEquals(
        List.of(NO_FRAME + "7f", "frame: 010302007bf867", "frame: 018302c0f1"),
        cut("7f 01 03 02 00 7b f8 67 01 83 02 c0 f1"));
  }

  /**
   * MODBUS Application Protocol V1.1b3, 6.3, 6.4, 6.6, 6.8.2, 6.12 and 7, with an address before
   * and the CRC behind, some of them public vectors with their CRC.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1103006b00037687",
        "110306022b00000064c8ba",
        "0103006b00037417",
        "010306022b00000064057a",
        "110400080001b298",
        "110402000af8f4",
        "1106000100039a9b",
        "11100001000204000a0102c6f0",
        "1110000100021298",
        "118102c054",
        "018302c0f1",
        "01830180f0",
        "0183030131",
        "01830440f3",
        "018402c2c1",
        "01030000000ac5cd",
        "110306ae415652434049ad",
        "1101001300250e84",
        "110200c40016baa9",
        "11080000a537d81d"
      })
  void publishedMessageIsAFrame(String hex) {
    assertEquals(List.of("frame: " + hex), cut(hex));
  }

  @ParameterizedTest
  @ValueSource(strings = {"010302007bf868", "010302007cf867", "010502007bf867"})
  void messageWithAWrongByteIsDamage(String hex) {
    assertEquals(List.of(NO_FRAME + hex, "frame: 018302c0f1"), cut(hex + "018302c0f1"));
  }

  @Test
  void requestThatComesBackIsAFrameBeforeItsResponse() {
    assertEquals(
        List.of("frame: 010400080001b008", "frame: 010402000a3937"),
        cut("010400080001b008 010402000a3937"));
  }

  /** Up to its last byte, zero, it is a request of function 3 with a right CRC. */
  @Test
  void responseThatIsARequestUpToItsLastByteIsOneFrame() {
    assertEquals(List.of("frame: 050304c149a5e36900"), cut("050304c149a5e36900"));
  }

  @Test
  void requestThatMightBecomeAResponseIsAFrameWhateverFollows() {
    String request = withCrc("010304100002").toHex();
    String response = withCrc("010304c149a5e3").toHex();
    assertEquals(List.of("frame: " + request), cut(request));
    assertEquals(
        List.of("frame: " + request, "frame: " + response, "frame: " + request),
        cut(request + response + request));
  }

  @Test
  void seededResponsesOneAfterAnotherAllComeOut() {
    long seed = 20_250_304;
    Random random = new Random(seed);
    Framer framer = Framers.of(new FrameSpec.ModbusRtu());
    int endInZero = 0;
    for (int i = 0; i < 100_000; i++) {
      Bytes response = response(random);
      endInZero += response.at(response.size() - 1) == 0 ? 1 : 0;
      List<FrameEvent> events = framer.feed(new LineEvent.Chunk(i, response));
      assertEquals(List.of("frame: " + response), Wire.timeless(events), "seed " + seed);
    }
    assertTrue(endInZero > 300, endInZero + " with a CRC that ends in zero");
  }

  @Test
  void seededRequestsAndTheirResponsesAllComeOut() {
    long seed = 20_250_305;
    Random random = new Random(seed);
    Framer framer = Framers.of(new FrameSpec.ModbusRtu());
    List<Bytes> sent = new ArrayList<>();
    List<Bytes> found = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      Bytes request = withCrc(String.format("0103%04x0002", random.nextInt(0x1000)));
      for (Bytes message : List.of(request, response(random))) {
        sent.add(message);
        found.addAll(Wire.frames(framer.feed(new LineEvent.Chunk(i, message))));
      }
    }
    found.addAll(Wire.frames(framer.feed(new LineEvent.End(20_000))));
    assertEquals(sent, found, "seed " + seed);
  }

  /** One to four registers of any content, from any slave. */
  private static Bytes response(Random random) {
    byte[] data = new byte[2 * (1 + random.nextInt(4))];
    random.nextBytes(data);
    int slave = 1 + random.nextInt(247);
    int function = 3 + random.nextInt(2);
    String head = String.format("%02x%02x%02x", slave, function, data.length);
    return withCrc(head + Bytes.of(data).toHex());
  }

  @Test
  void strayBytesThatPromiseALongMessageDoNotHoldBackTheRealOne() {
    Framer framer = Framers.of(new FrameSpec.ModbusRtu());
    List<FrameEvent> events =
        framer.feed(new LineEvent.Chunk(1, Bytes.ofHex("0103f0" + "010402000a3937")));
    assertEquals(List.of(NO_FRAME + "0103f0", "frame: 010402000a3937"), Wire.timeless(events));
  }

  @Test
  void longestMessageIsWhole() {
    Bytes longest = withCrc("0103fb" + "5a".repeat(251));
    assertEquals(256, longest.size());
    assertEquals(List.of("frame: " + longest), cut(longest.toHex()));
  }

  @Test
  void brokenLineMakesDamageOfWhatIsLeft() {
    Framer framer = Framers.of(new FrameSpec.ModbusRtu());
    framer.feed(new LineEvent.Chunk(1, Bytes.ofHex("010402")));
    assertEquals(List.of(NO_FRAME + "010402"), Wire.timeless(framer.feed(new LineEvent.Cut(1))));
  }

  @Nested
  class Contract extends FramerContract {
    @Override
    FrameSpec spec() {
      return new FrameSpec.ModbusRtu();
    }

    @Override
    int maxBytes() {
      return 256;
    }

    @Override
    List<Bytes> frames() {
      return List.of(
          Bytes.ofHex("010402000a3937"),
          Bytes.ofHex("018302c0f1"),
          Bytes.ofHex("0103006b00037417"),
          Bytes.ofHex("11100001000204000a0102c6f0"));
    }

    @Override
    List<Bytes> junk() {
      return List.of(
          Bytes.ofHex("01"),
          Bytes.ofHex("0103ff"),
          Bytes.ofHex("ffffff"),
          Bytes.ofHex("01".repeat(600)));
    }
  }
}
