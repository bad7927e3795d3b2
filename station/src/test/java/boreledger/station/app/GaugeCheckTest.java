package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.GaugeCheck.SampleFrame;
import boreledger.station.session.SmallGauge;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GaugeCheckTest {
  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
  }

  @Test
  void everyFrameIsASampleOrRejectedWithItsBytesAndItsReason() throws Exception {
    Path capture = bench.bores(List.of("+0.012", "rust", "-1.5"));

    GaugeCheck check = GaugeCheck.of(bench.gauge(SmallGauge.deviation()), capture);

    assertEquals(3, check.frames());
    assertEquals(List.of(new SampleFrame(10, 0.012), new SampleFrame(30, -1.5)), check.samples());
    assertEquals(1, check.rejected().size());
    assertEquals(20, check.rejected().get(0).t());
    assertEquals("727573740a", check.rejected().get(0).raw());
    assertTrue(!check.rejected().get(0).why().isBlank());
  }

  @Test
  void aLastFrameWithoutItsEndingIsRejected() throws Exception {
    Path capture = bench.bores(List.of("+0.012"));
    Files.writeString(capture, Files.readString(capture) + "{\"t\":20,\"rx\":\"2b302e\"}\n");

    GaugeCheck check = GaugeCheck.of(bench.gauge(SmallGauge.deviation()), capture);

    assertEquals(2, check.frames());
    assertEquals("2b302e", check.rejected().get(0).raw());
    assertEquals(20, check.rejected().get(0).t());
  }

  @Test
  void theHeadersOwnGaugeAndMeasureDoNotMatter() throws Exception {
    Path capture =
        bench.capture(
            "gaps.capture.jsonl",
            BenchFolder.gapHeader("nowhere.gauge.toml", "no such ring"),
            List.of("+0.450"));

    GaugeCheck check = GaugeCheck.of(bench.gauge(SmallGauge.deviation()), capture);

    assertEquals(List.of(new SampleFrame(10, 0.45)), check.samples());
  }

  @Test
  void valuesFarFromAnyBoreAreTheGaugesOwnAllTheSame() throws Exception {
    Path capture = bench.bores(List.of("+99.000"));

    GaugeCheck check = GaugeCheck.of(bench.gauge(SmallGauge.deviation()), capture);

    assertEquals(List.of(new SampleFrame(10, 99)), check.samples());
  }

  @Test
  void aCaptureWithoutBytesHasNoFrames() throws Exception {
    Path capture = bench.bores(List.of());

    assertEquals(
        new GaugeCheck(0, List.of(), List.of()),
        GaugeCheck.of(bench.gauge(SmallGauge.deviation()), capture));
  }

  @Test
  void aBuiltInProfileGoesByItsName() throws Exception {
    Path capture = bench.bores(List.of("96.012"));

    GaugeCheck check = GaugeCheck.of(Path.of("ascii-line-size"), capture);

    assertEquals(List.of(new SampleFrame(10, 96.012)), check.samples());
  }

  @Test
  void aProfileFileThatIsNotThereIsRefusedByItsPath() {
    Path capture = bench.bores(List.of("96.012"));
    Path nowhere = folder.resolve("nowhere.gauge.toml");

    FileProblem problem = assertThrows(FileProblem.class, () -> GaugeCheck.of(nowhere, capture));

    assertTrue(problem.getMessage().startsWith(nowhere + ": "), problem::getMessage);
  }
}
