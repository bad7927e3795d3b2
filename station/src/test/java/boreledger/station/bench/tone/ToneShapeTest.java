package boreledger.station.bench.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import org.junit.jupiter.api.Test;

class ToneShapeTest {
  private static final double NOTE_S = 0.13;

  @Test
  void aNoteHasItsPitch() {
    short[] samples = samples(ToneShape.notes(880));
    int crossings = 0;
    for (int i = 1; i < samples.length; i++) {
      if (samples[i - 1] < 0 != samples[i] < 0) {
        crossings++;
      }
    }

    // A sine crosses zero twice a period.
    assertEquals(2 * 880 * NOTE_S, crossings, 3);
  }

  @Test
  void notesBeginAndEndSoftly() {
    short[] samples = samples(ToneShape.notes(660, 880));
    int perNote = samples.length / 2;

    for (int start : new int[] {0, perNote}) {
      int attack = loudest(samples, start, 40);
      int middle = loudest(samples, start + perNote / 3, 200);
      int end = loudest(samples, start + perNote - 40, 40);
      assertTrue(attack < middle / 20, attack + " against " + middle);
      assertTrue(end < middle / 20, end + " against " + middle);
    }
  }

  @Test
  void notesAreAsLongAsTheirNumber() {
    assertEquals(2 * ToneShape.notes(440).length, ToneShape.notes(440, 330).length);
    assertEquals(NOTE_S, samples(ToneShape.notes(440)).length / ToneShape.RATE_HZ, 0.001);
  }

  @Test
  void noSampleIsCutOff() {
    int loudest = loudest(samples(ToneShape.notes(660, 880)), 0, 10_000);

    assertTrue(loudest > 8_000 && loudest < 20_000, "loudest " + loudest);
  }

  private static int loudest(short[] samples, int from, int count) {
    int loudest = 0;
    for (int i = from; i < Math.min(samples.length, from + count); i++) {
      loudest = Math.max(loudest, Math.abs(samples[i]));
    }
    return loudest;
  }

  private static short[] samples(byte[] bytes) {
    ShortBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
    short[] samples = new short[buffer.remaining()];
    buffer.get(samples);
    return samples;
  }
}
