package boreledger.drivers.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.LineContract;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class RecordingLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(200);
  private static final CaptureHeader BORES =
      new CaptureHeader(
          "g.gauge.toml", Measure.BORE, null, Instant.parse("2031-05-06T08:00:00.25Z"), 20.4, null);
  private static final CaptureHeader GAPS =
      new CaptureHeader("g.gauge.toml", Measure.GAP, "top", Instant.EPOCH, null, 21.3);

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("r.capture.jsonl");
  }

  private static List<LineEvent> said(int count) {
    Random random = new Random(5);
    List<LineEvent> said = new ArrayList<>();
    double tS = 0;
    for (int i = 0; i < count; i++) {
      tS += random.nextDouble() / 3;
      byte[] bytes = new byte[random.nextInt(20)];
      random.nextBytes(bytes);
      said.add(new LineEvent.Chunk(tS, Bytes.of(bytes)));
    }
    said.add(new LineEvent.Gone(tS, "wire: \"gone\""));
    said.add(new LineEvent.Back(tS + 1, "wire: back"));
    return said;
  }

  private static Line playing(CaptureHeader header, List<LineEvent> said) {
    return new CaptureLine(new Capture("c.capture.jsonl", header, said), Pace.asFastAsRead());
  }

  @Test
  void recordingHoldsWhatTheLineSaidAndTheHeader() throws Exception {
    for (CaptureHeader header : List.of(BORES, GAPS)) {
      Files.deleteIfExists(file());
      List<LineEvent> said = said(200);
      try (Line line =
          new RecordingLine(playing(header, said), CaptureWriter.create(file(), header))) {
        while (!(line.read(TIMEOUT) instanceof LineEvent.End)) {
          assertTrue(Files.size(file()) > 0);
        }
      }
      assertEquals(new Capture("r.capture.jsonl", header, said), CaptureFiles.read(file()));
    }
  }

  @Test
  void recordingIsReadableAfterEveryEvent() throws Exception {
    List<LineEvent> said = said(50);
    try (Line line = new RecordingLine(playing(BORES, said), CaptureWriter.create(file(), BORES))) {
      assertEquals(List.of(), CaptureFiles.read(file()).said());
      for (int i = 0; i < said.size(); i++) {
        assertEquals(said.get(i), line.read(TIMEOUT));
        assertEquals(said.subList(0, i + 1), CaptureFiles.read(file()).said());
      }
    }
  }

  @Test
  void fileThatIsThereStaysAsItIs() throws Exception {
    Files.writeString(file(), "what was measured yesterday");
    assertThrows(FileAlreadyExistsException.class, () -> CaptureWriter.create(file(), BORES));
    assertEquals("what was measured yesterday", Files.readString(file()));
  }

  @Test
  @EnabledOnOs(value = OS.LINUX, disabledReason = "needs a device that is always full")
  void fullDiskBreaksTheLineAfterWhatWasReadIsHandedOn() throws Exception {
    Path device = Path.of("/dev/full");
    CaptureWriter full = CaptureWriter.onto(device);
    List<LineEvent> said = said(3);
    try (Line line = new RecordingLine(playing(BORES, said), full)) {
      assertEquals(said.get(0), line.read(TIMEOUT));
      String message = assertThrows(LineFault.class, () -> line.read(TIMEOUT)).getMessage();
      assertTrue(message.startsWith(device + ": the recording could not be written"), message);
    }
  }

  @Test
  void closedRecordingTakesNothingMore() throws Exception {
    Line line = new RecordingLine(playing(BORES, said(3)), CaptureWriter.create(file(), BORES));
    line.close();
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
    assertEquals(List.of(), CaptureFiles.read(file()).said());
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() throws Exception {
      Files.deleteIfExists(file());
      LineEvent.Chunk chunk = new LineEvent.Chunk(0, content());
      LineEvent.Chunk later = new LineEvent.Chunk(3600, content());
      Capture capture = new Capture("c.capture.jsonl", BORES, List.of(chunk, later));
      return new RecordingLine(
          new CaptureLine(capture, Pace.times(1)), CaptureWriter.create(file(), BORES));
    }

    @Override
    protected Bytes content() {
      return Bytes.ofHex("01020304");
    }
  }
}
