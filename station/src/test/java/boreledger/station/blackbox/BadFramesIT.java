package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import boreledger.station.truth.BoreReading;
import boreledger.station.truth.BoreTruth;
import boreledger.station.truth.CaptureText;
import boreledger.station.truth.Drift;
import boreledger.station.truth.Engine;
import boreledger.station.truth.Noise;
import boreledger.station.truth.PressSession;
import boreledger.station.truth.PumphouseThree;
import boreledger.station.truth.Wire;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A frame or a value that cannot be a reading uses up no position and is not passed over. */
class BadFramesIT {
  private final Launcher program = Launcher.quick();

  @TempDir Path folder;

  /** Every frame decodes; the bores lie far from 96 mm. Nominal 96 mm, largest oversize 1 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"+2.100\r\n", "-0.600\r\n", "+25.400\r\n", "-96.000\r\n"})
  void aBoreThatCannotBeUsesUpNoPosition(String frame) {
    assertPositionsStandWith(frame);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ERR\r\n", "+0.01\u00b5\r\n", "+0,012\r\n", "0x12\r\n"})
  void aFrameThatDoesNotDecodeUsesUpNoPosition(String frame) {
    assertPositionsStandWith(frame);
  }

  /** Gaps beyond 5 mm are refused, whatever the job says. */
  @Test
  void aGapThatCannotBeUsesUpNoPosition() {
    Bundle bundle =
        new Bundle(folder)
            .withSamples(
                "pumphouse-three.job.toml",
                "signed-decimal.gauge.toml",
                "gap-leaf.gauge.toml",
                "bore-press.capture.jsonl",
                "gap-top.capture.jsonl");
    bundle.edit(
        "gap-top.capture.jsonl", "{\"t\":", "{\"t\":2.5,\"rx\":\"372e3830300d0a\"}\n{\"t\":");
    Outcome outcome =
        program.run(
            bundle.replay(
                "pumphouse-three.job.toml",
                List.of("bore-press.capture.jsonl", "gap-top.capture.jsonl")));
    assertEquals(
        0.42,
        Json.among(
                Json.among(
                        outcome.ended(1).json().path("cylinders").get(0).path("rings"),
                        "ring",
                        "top")
                    .path("gaps"),
                "depth_mm",
                12.0)
            .path("measured_mm")
            .asDouble());
    assertFalse(outcome.stderr().isBlank(), "the refused gap is mentioned");
  }

  /** The fresh bores of the engine alone, so that only the bad frame asks for attention. */
  private void assertPositionsStandWith(String frame) {
    Engine engine = PumphouseThree.fresh();
    Bundle bundle = new Bundle(folder).withJob(engine);
    bundle.write("bore.gauge.toml", Bundle.lineProfile("deviation", "0.001"));
    List<PressSession.Press> presses =
        PressSession.gauge(engine, new Drift(0, 0.001, 60), 0, Wire.signedMm(3), new Noise(5))
            .presses();
    bundle.withCapture("clean.capture.jsonl", capture(engine, presses, null));
    bundle.withCapture("bore.capture.jsonl", capture(engine, presses, frame));
    program
        .run(
            "replay",
            "--json",
            "--job",
            bundle.path("engine.job.toml"),
            "--capture",
            bundle.path("clean.capture.jsonl"),
            "--ledger",
            bundle.path("clean.ledger"))
        .ended(0);
    Outcome outcome =
        program.run(bundle.replay("engine.job.toml", List.of("bore.capture.jsonl"))).ended(1);
    List<BoreReading> readings = presses.stream().map(PressSession.Press::reading).toList();
    BoreTruth truth = BoreTruth.ofReadings(engine.bench(), readings);
    int compared =
        new ResultsCheck(outcome.json(), "with " + frame)
            .bores(engine, truth, ResultsCheck.DIAMETER_MM)
            .compared();
    assertEquals(6 + 2 + 3, compared);
    assertFalse(outcome.stderr().isBlank(), "what was refused is mentioned");
  }

  private static CaptureText capture(
      Engine engine, List<PressSession.Press> presses, String badFrame) {
    Map<String, Object> header = new LinkedHashMap<>();
    header.put("gauge", "bore.gauge.toml");
    header.put("measure", "bore");
    header.put("started", "2031-05-06T08:00:00Z");
    header.put("setting_temp_c", engine.bench().settingTempC());
    header.put("block_temp_c", engine.bench().blockTempC());
    CaptureText capture = new CaptureText(header);
    for (int i = 0; i < presses.size(); i++) {
      BigDecimal tS = presses.get(i).reading().tS();
      if (i == 3 && badFrame != null) {
        capture.chunk(tS.subtract(new BigDecimal("0.100")), badFrame);
      }
      capture.chunk(tS, presses.get(i).frame());
    }
    return capture;
  }
}
