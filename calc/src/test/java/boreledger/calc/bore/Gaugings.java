package boreledger.calc.bore;

import java.util.ArrayList;
import java.util.List;

/** Sessions with the bore gauge to test with. */
public final class Gaugings {
  /** A setting ring of 96.002 mm. */
  public static final SettingStandard RING = SettingStandard.ring(96.002, 0.001, 11.5e-6);

  /** Checks at 0 s and 1000 s, the zero unmoved. */
  public static final ZeroLine STILL =
      ZeroLine.of(new ZeroCheck(0, 0, 20.4), new ZeroCheck(1000, 0, 20.4));

  private Gaugings() {}

  /** A usual session: 0.001 mm steps, 0.002 mm permissible error, 0.0008 mm scatter. */
  public static BoreGauging usual() {
    return with(STILL, GaugeAccuracy.of(0.001, 0.002));
  }

  /** A session with another zero and gauge. */
  public static BoreGauging with(ZeroLine zero, GaugeAccuracy gauge) {
    return new BoreGauging(
        RING,
        zero,
        gauge,
        new Repeatability(0.0008, 30, 1),
        21.3,
        11.4e-6,
        ThermalUncertainty.DEFAULT);
  }

  /** A session at 20 degrees whose readings are deviations from 100 mm, without any error. */
  public static BoreGauging exact() {
    return new BoreGauging(
        SettingStandard.ring(100, 0, 0),
        ZeroLine.of(new ZeroCheck(0, 0, 20), new ZeroCheck(1000, 0, 20)),
        GaugeAccuracy.of(0.001, 0.002),
        null,
        20,
        11.4e-6,
        ThermalUncertainty.DEFAULT);
  }

  /** The diameter that a session would have read exactly. */
  public static Diameter diameter(
      BoreGauging session, double depthMm, String axis, double diameterMm) {
    double asRead =
        diameterMm * ReferenceTemperature.growth(session.boreCtePerK(), session.blockTempC());
    double offset = session.zero().offsetMm(500, session.setting());
    return session.diameter(new BoreReading(depthMm, axis, 500, asRead + offset, null));
  }

  /** A profile on one or more axes: per depth one row of diameters. */
  public static BoreProfile profile(
      BoreGauging session, double[] depthsMm, double[]... diametersMm) {
    List<String> axes = List.of("thrust", "pin", "third", "fourth");
    List<Diameter> all = new ArrayList<>();
    for (int j = 0; j < depthsMm.length; j++) {
      for (int k = 0; k < diametersMm[j].length; k++) {
        all.add(diameter(session, depthsMm[j], axes.get(k), diametersMm[j][k]));
      }
    }
    return BoreProfile.of(all);
  }
}
