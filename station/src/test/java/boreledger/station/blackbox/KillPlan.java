package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.truth.Axis;
import boreledger.station.truth.Bench;
import boreledger.station.truth.BoreShape;
import boreledger.station.truth.Engine;
import boreledger.station.truth.Position;
import boreledger.station.truth.PumphouseThree;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** A long plan and a gauge that never shows the same value twice. */
final class KillPlan {
  /** What the gauge shows on the setting ring, always. */
  static final String ZERO = "+0.000000\r\n";

  private static final int CYLINDERS = 16;
  // Two kills take eight frames at the most, and no frame is sent twice.
  private static final int PLACES_A_KILL = 4;
  // Small enough that no value leaves the plausible bores, however many are sent.
  private static final int STEP_NM = 100;

  private final Engine engine;
  private int framesSent;

  KillPlan(int kills) {
    Engine three = PumphouseThree.engine();
    engine =
        new Engine(
            "Sixteen in a row",
            three.nominalMm(),
            three.strokeMm(),
            three.bench(),
            three.settingUncertaintyMm(),
            Map.of(),
            depthsMm(kills),
            List.of(Axis.THRUST, Axis.PIN),
            three.rings(),
            null,
            Collections.nCopies(CYLINDERS, BoreShape.cylinder(96.0)));
  }

  private static List<Double> depthsMm(int kills) {
    int depths = (int) Math.ceil((double) kills * PLACES_A_KILL / CYLINDERS / Axis.values().length);
    return IntStream.range(0, depths).mapToObj(i -> 12 + i * 90.0 / depths).toList();
  }

  Engine engine() {
    return engine;
  }

  int places() {
    return engine.plan().size();
  }

  /** The next frames, each 0.0001 mm above the one before. */
  String burst(int frames) {
    StringBuilder bytes = new StringBuilder();
    for (int i = 0; i < frames; i++) {
      framesSent++;
      bytes.append(String.format(Locale.ROOT, "+%.6f\r\n", framesSent * STEP_NM / 1e6));
    }
    return bytes.toString();
  }

  /**
   * The numbers of the frames that stand in the answer, in the order of the plan, without holes.
   */
  List<Integer> framesIn(JsonNode results) {
    List<Integer> frames = new ArrayList<>();
    boolean over = false;
    for (Position place : engine.plan()) {
      JsonNode diameter = diameter(results, place);
      assertTrue(
          !over || diameter.isMissingNode() || diameter.isNull(), () -> "a hole before " + place);
      over |= !diameter.isNumber();
      if (diameter.isNumber()) {
        frames.add(frame(diameter.doubleValue()));
      }
    }
    return frames;
  }

  private int frame(double diameterAt20Mm) {
    Bench bench = engine.bench();
    BigDecimal shown =
        BigDecimal.valueOf(diameterAt20Mm)
            .multiply(bench.blockGrowth())
            .subtract(bench.settingNowMm());
    double frames = shown.doubleValue() * 1e6 / STEP_NM;
    int frame = (int) Math.rint(frames);
    assertEquals(frame, frames, 0.01, "a value that was sent");
    assertTrue(frame >= 1 && frame <= framesSent, "frame " + frame + " of " + framesSent);
    return frame;
  }

  private static JsonNode diameter(JsonNode results, Position place) {
    for (JsonNode cylinder : results.path("cylinders")) {
      if (cylinder.path("cylinder").asInt() == place.cylinder()) {
        for (JsonNode position : cylinder.path("bore").path("positions")) {
          if (position.path("axis").asText().equals(place.axis().label())
              && Math.abs(position.path("depth_mm").asDouble() - place.depthMm()) < 1e-9) {
            return position.path("diameter_mm");
          }
        }
      }
    }
    return com.fasterxml.jackson.databind.node.MissingNode.getInstance();
  }
}
