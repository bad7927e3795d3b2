package boreledger.station.truth;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes what must come out of a capture, with a header saying who computed it. */
public final class ExpectedJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().configure(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN, true);

  private final ObjectNode root = MAPPER.createObjectNode();

  /** Begins with the header. */
  public ExpectedJson(String capture, String tolerance) {
    root.put(
        "computed_by",
        "the independent model in the station's tests (package boreledger.station.truth):"
            + " decimals of 34 digits, perimeters by adding up arc length");
    root.put("tolerance", tolerance);
    root.put("capture", capture);
  }

  /** How the program is to be called on it and how it must end. */
  public ExpectedJson replay(List<String> captures, int exit, String why) {
    ObjectNode replay = root.putObject("replay");
    replay.put("job", SampleFolder.JOB);
    captures.forEach(replay.putArray("captures")::add);
    replay.put("exit", exit);
    replay.put("why", why);
    return this;
  }

  /** What cutting and decoding alone must find. */
  public ExpectedJson gaugeCheck(
      String gauge, int samples, List<DamagedLine.Refusal> rejected, int exit) {
    ObjectNode check = root.putObject("gauge_check");
    check.put("gauge", gauge);
    check.put("samples", samples);
    check.put("rejected_count", rejected.size());
    refusals(check.putArray("rejected"), rejected);
    check.put("exit", exit);
    return this;
  }

  /** What decodes and is refused as a reading. */
  public ExpectedJson refusedReadings(List<DamagedLine.Refusal> refused) {
    refusals(root.putArray("refused_readings"), refused);
    return this;
  }

  /** The readings as the gauge sent them, in order. */
  public ExpectedJson readings(List<BoreReading> readings) {
    ArrayNode list = root.putArray("readings");
    for (BoreReading reading : readings) {
      ObjectNode node = list.addObject();
      node.put("t", reading.tS());
      node.put("value_mm", reading.mm());
      node.put("at", place(reading.position()));
    }
    return this;
  }

  /** Answers about all bores. */
  public ExpectedJson bores(Engine engine, BoreTruth bores) {
    for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
      bore(cylinder(cylinder).putObject("bore"), engine, bores, cylinder);
      ArrayNode rings = cylinder(cylinder).putArray("rings");
      for (RingKind ring : engine.rings()) {
        changes(rings.addObject(), new GapTruth(engine, bores, ring, cylinder));
      }
    }
    return this;
  }

  /** Answers about one ring in all bores. */
  public ExpectedJson gaps(Engine engine, BoreTruth bores, GapSession session) {
    for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
      GapTruth truth = new GapTruth(engine, bores, session.ring(), cylinder);
      ring(cylinder(cylinder).putArray("rings").addObject(), truth, session.readings(cylinder));
    }
    return this;
  }

  /** The file's text. */
  @Override
  public String toString() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
    printer.indentArraysWith(indenter);
    try {
      return MAPPER.writer(printer).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ObjectNode cylinder(int cylinder) {
    ArrayNode cylinders = root.withArray("cylinders");
    while (cylinders.size() < cylinder) {
      int next = cylinders.size() + 1;
      cylinders.addObject().put("cylinder", next);
    }
    return (ObjectNode) cylinders.get(cylinder - 1);
  }

  private static void bore(ObjectNode node, Engine engine, BoreTruth bores, int cylinder) {
    ArrayNode positions = node.putArray("positions");
    bores
        .diametersMm()
        .forEach(
            (place, diameterMm) -> {
              if (place.cylinder() == cylinder) {
                ObjectNode position = positions.addObject();
                position.put("depth_mm", number(place.depthMm()));
                position.put("axis", place.axis().label());
                position.put("diameter_mm", scaled(diameterMm));
                position.put("true_diameter_mm", number(engine.trueDiameterMm(place)));
              }
            });
    ObjectNode taper = node.putObject("taper_mm");
    engine.axes().forEach(a -> taper.put(a.label(), scaled(bores.taperMm(cylinder, a))));
    ArrayNode outOfRound = node.putArray("out_of_round_mm");
    ArrayNode perimeters = node.putArray("perimeters");
    for (double depthMm : engine.depthsDownMm()) {
      BigDecimal depth = number(depthMm);
      BigDecimal out = scaled(bores.outOfRoundMm(cylinder, depthMm));
      outOfRound.addObject().put("depth_mm", depth).put("value_mm", out);
      BigDecimal perimeter = number(bores.perimeterMm(cylinder, depthMm));
      perimeters.addObject().put("depth_mm", depth).put("perimeter_mm", perimeter);
    }
  }

  private static void changes(ObjectNode node, GapTruth truth) {
    node.put("ring", truth.ring().name());
    ArrayNode gaps = node.putArray("gaps");
    for (double depthMm : truth.ring().gaugingOrderMm()) {
      ObjectNode gap = gaps.addObject();
      gap.put("depth_mm", number(depthMm));
      gap.put("expected_change_mm", number(truth.expectedChangeMm(depthMm)));
    }
  }

  private static void ring(ObjectNode node, GapTruth truth, List<GapReading> readings) {
    node.put("ring", truth.ring().name());
    ArrayNode gaps = node.putArray("gaps");
    for (GapReading reading : readings) {
      ObjectNode gap = gaps.addObject();
      gap.put("depth_mm", number(reading.depthMm()));
      gap.put("measured_mm", reading.mm());
      gap.put("expected_change_mm", number(truth.expectedChangeMm(reading.depthMm())));
      gap.put("expected_mm", number(truth.expectedMm(reading, readings)));
    }
    double lengthMm = truth.meanLengthMm(readings);
    node.put("ring_length_mm", number(lengthMm));
    tight(node.putObject("tightest"), truth.tightestMm(lengthMm));
    tight(node.putObject("tightest_hot"), truth.tightestHotMm(lengthMm));
    Double targetMm = truth.ring().targetMm();
    if (targetMm != null) {
      double removeMm = Math.max(0, targetMm - truth.tightestMm(lengthMm).gapMm());
      node.put("target_mm", number(targetMm));
      node.put("remove_mm", number(removeMm));
    }
  }

  private static void tight(ObjectNode node, GapTruth.Tight tight) {
    node.put("depth_mm", number(tight.depthMm())).put("gap_mm", number(tight.gapMm()));
  }

  private static void refusals(ArrayNode list, List<DamagedLine.Refusal> refusals) {
    for (DamagedLine.Refusal refusal : refusals) {
      list.addObject().put("t", refusal.tS()).put("why", refusal.why());
    }
  }

  private static String place(Position position) {
    return position == null
        ? "setting ring"
        : "cylinder %d, %s mm, %s"
            .formatted(position.cylinder(), position.depthMm(), position.axis().label());
  }

  private static BigDecimal number(double value) {
    return scaled(BigDecimal.valueOf(value));
  }

  private static BigDecimal scaled(BigDecimal value) {
    return value.setScale(9, RoundingMode.HALF_EVEN);
  }
}
