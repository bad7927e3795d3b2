package boreledger.station.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

class ModelledGaugeTest {

  @Test
  void theSignedLineIsASignDigitsAndItsEnding() {
    assertEquals("+0.012\r\n", Wire.signedMm(3).send(0.01249).frame());
    assertEquals("-0.012\r\n", Wire.signedMm(3).send(-0.01151).frame());
  }

  @Test
  void theCommaFrameIsTenBytesWhateverTheValue() {
    for (double mm : new double[] {0, 0.01234, -0.5, 12.3456, -9.9999}) {
      String frame = Wire.fixedComma().send(mm).frame();
      assertEquals(10, frame.getBytes(StandardCharsets.ISO_8859_1).length, frame);
    }
    assertEquals("D-00,5000\r", Wire.fixedComma().send(-0.5).frame());
  }

  /** One inch is 25.4 mm exactly (international agreement of 1959). */
  @Test
  void theInchLineMeansExactlyWhatItsDigitsSay() {
    Wire.Sent sent = Wire.signedInch().send(0.0134);
    assertEquals("+0.00055 in\r\n", sent.frame());
    assertEquals(0, sent.meansMm().compareTo(new BigDecimal("0.01397")));
  }

  /** MODBUS over serial line V1.02, 6.2.2: the bytes 02 07 have the CRC 1241. */
  @Test
  void theModelsCrcIsThatOfTheGuidesExample() {
    assertEquals(0x1241, BinaryWire.crc16("0207"));
  }

  @Test
  void framesOfBytesAreWhatTheirProfilesSay() {
    assertEquals("028000007bfd0d", hex(BinaryWire.integerWithUnitBit(false)));
    // -0.0123 mm is -0.000484 in, which is 48 steps of 0.00001 in.
    assertEquals("0281000030b30d", hex(BinaryWire.integerWithUnitBit(true)));
    assertEquals("aad423010055", hex(BinaryWire.packedDigits()));
    assertEquals("85ffff", hex(BinaryWire.silent()).substring(0, 6));
    assertEquals("110404ffffff85", hex(BinaryWire.modbus()).substring(0, 14));
  }

  private static String hex(Wire wire) {
    byte[] frame = wire.send(-0.0123).frame().getBytes(StandardCharsets.ISO_8859_1);
    return HexFormat.of().formatHex(frame);
  }

  @Test
  void rockingNeverReadsBelowTheDiameterAndComesCloseToIt() {
    Noise noise = new Noise(8);
    for (int hands = 0; hands < 20; hands++) {
      RockingHand hand = new RockingHand(noise);
      double least = Double.MAX_VALUE;
      double most = 0;
      for (double s = 0; s < 5; s += 0.001) {
        double excess = hand.excessMm(96, s);
        assertTrue(excess >= 0);
        least = Math.min(least, excess);
        most = Math.max(most, excess);
      }
      assertTrue(least < 1e-5, "least " + least);
      assertTrue(most > 0.15 && most < 1.2, "most " + most);
    }
  }

  @Test
  void normalNoiseHasItsSpread() {
    Noise noise = new Noise(4);
    double squares = 0;
    for (int i = 0; i < 20_000; i++) {
      double value = noise.normal(2.0);
      squares += value * value;
    }
    assertEquals(2.0, StrictMath.sqrt(squares / 20_000), 0.05);
  }

  @Test
  void everyPositionOfTheDamagedLineIsRead() {
    Engine engine = PumphouseThree.engine();
    PressSession session =
        PressSession.gauge(engine, PumphouseThree.drift(160), 0, Wire.signedMm(3), new Noise(2));
    CaptureText capture = new CaptureText(java.util.Map.of());
    DamagedLine line = new DamagedLine(capture, session.presses());
    List<Position> read = line.readings().stream().map(BoreReading::position).toList();
    List<Position> pressed =
        session.presses().stream().map(press -> press.reading().position()).toList();
    assertEquals(pressed, read);
    assertEquals(4, line.rejected().size());
    assertEquals(1, line.tooFar().size());
  }
}
