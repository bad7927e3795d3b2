package boreledger.station.blackbox;

import boreledger.station.truth.BoreReading;
import boreledger.station.truth.BoreTruth;
import boreledger.station.truth.CaptureText;
import boreledger.station.truth.ChunkedLine;
import boreledger.station.truth.Drift;
import boreledger.station.truth.Engine;
import boreledger.station.truth.GapReading;
import boreledger.station.truth.GapSession;
import boreledger.station.truth.GapTruth;
import boreledger.station.truth.Noise;
import boreledger.station.truth.PressSession;
import boreledger.station.truth.RingKind;
import boreledger.station.truth.Wire;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An engine out of a seed, its files written into a folder, and what the program must answer. The
 * gauge's digits are fine, and what they say is fed back into the truth, so rounding plays no part.
 */
final class RandomJob {
  private static final double LENGTH_MM = 1e-5;

  private final String name;
  private final Noise noise;
  private final Engine engine;
  private final Bundle bundle;
  private final BoreTruth truth;
  private final List<GapSession> gaps = new ArrayList<>();
  private final List<String> captures = new ArrayList<>();

  RandomJob(long seed, Bundle bundle) {
    name = "seed " + seed;
    noise = new Noise(seed);
    engine = new RandomEngine(noise).engine(name);
    this.bundle = bundle.withJob(engine);
    truth = gaugeBores();
    engine.rings().forEach(this::gaugeGaps);
    Collections.shuffle(captures, noise.source());
  }

  List<String> replay() {
    return bundle.replay("engine.job.toml", captures);
  }

  /** Compares everything and says how many figures that were. */
  int check(JsonNode results) {
    ResultsCheck check = new ResultsCheck(results, name);
    check.bores(engine, truth, ResultsCheck.DIAMETER_MM);
    for (GapSession session : gaps) {
      for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
        GapTruth gap = new GapTruth(engine, truth, session.ring(), cylinder);
        List<GapReading> readings = session.readings(cylinder);
        check.gaps(gap, readings, ResultsCheck.CHANGE_MM);
        check.lengths(gap, readings, LENGTH_MM);
      }
    }
    return check.compared();
  }

  /** How many figures a whole answer has. */
  int figures() {
    int cylinders = engine.bores().size();
    int figures = engine.plan().size() + cylinders * (2 + engine.depthsMm().size());
    for (GapSession session : gaps) {
      int depths = session.ring().depthsMm().size();
      figures += cylinders * (depths * (depths > 1 ? 3 : 2) + 1);
    }
    return figures;
  }

  private BoreTruth gaugeBores() {
    int decimals = noise.between(6, 7);
    boolean size = noise.chance(0.5);
    Drift drift = drift();
    Wire wire =
        size ? Wire.sizeMm(decimals, engine.bench().settingNowMm()) : Wire.signedMm(decimals);
    List<PressSession.Press> presses =
        new ArrayList<>(PressSession.gauge(engine, drift, 0, wire, noise).presses());
    if (noise.chance(0.1)) {
      presses.remove(presses.size() - 1); // no closing check: the opening zero holds
    }
    bundle.write(
        "bore.gauge.toml",
        Bundle.lineProfile(size ? "size" : "deviation", decimals == 6 ? "0.000001" : "0.0000001"));
    CaptureText capture = new CaptureText(header("bore", "bore.gauge.toml", null));
    List<BoreReading> readings = ChunkedLine.write(capture, presses, noise);
    bundle.withCapture("bore.capture.jsonl", capture);
    captures.add("bore.capture.jsonl");
    return BoreTruth.ofReadings(engine.bench(), readings);
  }

  private void gaugeGaps(RingKind ring) {
    BoreTruth trueBores = BoreTruth.ofEngine(engine);
    double shallowestMm = ring.gaugingOrderMm().get(0);
    List<Double> firstGapsMm = new ArrayList<>();
    for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
      double smallest = Collections.min(trueBores.perimetersMm(cylinder).values());
      double overSmallest = trueBores.perimeterMm(cylinder, shallowestMm) - smallest;
      firstGapsMm.add(noise.between(0.15, 0.8) + overSmallest);
    }
    GapSession session =
        GapSession.gauge(engine, ring, firstGapsMm, 0, Wire.signedMmWithUnit(6), noise);
    bundle.write("gap.gauge.toml", Bundle.lineProfile("size", "0.000001"));
    CaptureText capture = new CaptureText(header("gap", "gap.gauge.toml", ring.name()));
    session.presses().forEach(press -> capture.chunk(press.reading().tS(), press.frame()));
    String file = "gap-" + ring.name() + ".capture.jsonl";
    bundle.withCapture(file, capture);
    captures.add(file);
    gaps.add(session);
  }

  private Drift drift() {
    return new Drift(
        noise.between(-0.02, 0.02), noise.between(-0.02, 0.02), noise.between(90.0, 1500.0));
  }

  private Map<String, Object> header(String measure, String gauge, String ring) {
    Map<String, Object> header = new LinkedHashMap<>();
    header.put("gauge", gauge);
    header.put("measure", measure);
    if (ring != null) {
      header.put("ring", ring);
    }
    header.put("started", "2031-05-06T0%d:00:00Z".formatted(measure.equals("bore") ? 8 : 9));
    if (ring == null) {
      header.put("setting_temp_c", engine.bench().settingTempC());
    }
    header.put("block_temp_c", engine.bench().blockTempC());
    return header;
  }
}
