package boreledger.station.bench.tone;

/** Sine notes with a soft attack and a soft end, as 16-bit little-endian samples on one channel. */
final class ToneShape {
  static final float RATE_HZ = 44_100;

  private static final double NOTE_S = 0.13;
  private static final double ATTACK_S = 0.012;
  private static final double RELEASE_S = 0.06;
  private static final double LOUDNESS = 0.35;

  private ToneShape() {}

  /** One note after the other. */
  static byte[] notes(double... frequenciesHz) {
    int perNote = (int) (RATE_HZ * NOTE_S);
    byte[] bytes = new byte[2 * perNote * frequenciesHz.length];
    for (int i = 0; i < bytes.length / 2; i++) {
      double tS = i % perNote / (double) RATE_HZ;
      double wave = Math.sin(2 * Math.PI * frequenciesHz[i / perNote] * tS);
      short sample = (short) Math.round(LOUDNESS * Short.MAX_VALUE * envelope(tS) * wave);
      bytes[2 * i] = (byte) sample;
      bytes[2 * i + 1] = (byte) (sample >> 8);
    }
    return bytes;
  }

  /** Rises and falls as half a cosine: a sudden start would click. */
  private static double envelope(double tS) {
    double rise = Math.min(1, tS / ATTACK_S);
    double fall = Math.min(1, (NOTE_S - tS) / RELEASE_S);
    return 0.5 * (1 - Math.cos(Math.PI * Math.min(rise, fall)));
  }
}
