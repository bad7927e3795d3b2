package boreledger.station.bench.tone;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class SineTonesTest {
  @Test
  void soundingNeverBlocksAndNeverFailsWithOrWithoutAudio() {
    try (SineTones tones = new SineTones()) {
      assertTimeoutPreemptively(
          Duration.ofSeconds(2),
          () -> {
            for (int i = 0; i < 500; i++) {
              tones.taken();
              tones.lookAtMe();
            }
          });
    }
  }

  @Test
  void afterClosingItIsSilent() {
    SineTones tones = new SineTones();
    tones.close();

    assertDoesNotThrow(tones::taken);
  }
}
