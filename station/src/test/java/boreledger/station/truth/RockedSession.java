package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A sitting with a streaming gauge: it sends all the time, in free air its anvils spring out to a
 * steady value, in a bore it is rocked. Before the first and after the last place it is in the air.
 */
public final class RockedSession {
  private static final int SAMPLES_PER_S = 25;
  private static final double FREE_AIR_MM = 2.6;
  private static final int ENTERING_SAMPLES = 3;
  private static final double NOISE_MM = 0.0007;

  /** One value on the line. */
  public record Streamed(BigDecimal tS, String frame) {}

  private final Engine engine;
  private final Drift drift;
  private final Wire wire;
  private final Noise noise;
  private final List<Streamed> stream = new ArrayList<>();
  private int glitches;

  private RockedSession(Engine engine, Drift drift, Wire wire, Noise noise) {
    this.engine = engine;
    this.drift = drift;
    this.wire = wire;
    this.noise = noise;
  }

  /** Gauges the whole plan between two checks on the setting ring. */
  public static RockedSession gauge(Engine engine, Drift drift, Wire wire, Noise noise) {
    RockedSession session = new RockedSession(engine, drift, wire, noise);
    session.air();
    session.rock(null);
    for (Position place : engine.plan()) {
      session.air();
      session.rock(place);
    }
    session.air();
    session.rock(null);
    session.air();
    return session;
  }

  /** Everything that was sent. */
  public List<Streamed> stream() {
    return List.copyOf(stream);
  }

  /** How many single values were spoilt on purpose. */
  public int glitches() {
    return glitches;
  }

  private void air() {
    int samples = (int) (noise.between(0.7, 1.5) * SAMPLES_PER_S);
    for (int i = 0; i < samples; i++) {
      send(FREE_AIR_MM);
    }
  }

  private void rock(Position place) {
    RockingHand hand = new RockingHand(noise);
    int samples = (int) (noise.between(5.0, 7.0) * SAMPLES_PER_S);
    double sizeMm =
        place == null
            ? engine.bench().settingNowMm().doubleValue()
            : engine.trueDiameterMm(place) * engine.bench().blockGrowth().doubleValue();
    double levelMm = sizeMm - engine.bench().settingNowMm().doubleValue();
    double firstMm = levelMm + hand.excessMm(sizeMm, 0);
    for (int i = 1; i <= ENTERING_SAMPLES; i++) {
      send(FREE_AIR_MM + (firstMm - FREE_AIR_MM) * i / (ENTERING_SAMPLES + 1));
    }
    for (int i = 0; i < samples; i++) {
      double excessMm = hand.excessMm(sizeMm, (double) i / SAMPLES_PER_S);
      send(levelMm + excessMm + (place == null ? 0 : glitchMm()));
    }
  }

  private double glitchMm() {
    if (!noise.chance(0.003)) {
      return 0;
    }
    glitches++;
    return noise.chance(0.4) ? -noise.between(0.02, 0.15) : noise.between(0.02, 0.3);
  }

  private void send(double mm) {
    double tS = (double) stream.size() / SAMPLES_PER_S;
    Wire.Sent sent = wire.send(mm + drift.atMm(tS) + noise.normal(NOISE_MM));
    stream.add(new Streamed(CaptureText.seconds(tS), sent.frame()));
  }
}
