package boreledger.station.bench.tone;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * Plays the tones through the machine's sound, on a thread of its own. Where there is no sound it
 * is silent: the screen says the same in words.
 */
public final class SineTones implements Tones, AutoCloseable {
  private static final AudioFormat FORMAT = new AudioFormat(ToneShape.RATE_HZ, 16, 1, true, false);

  private final byte[] taken = ToneShape.notes(660, 880);
  private final byte[] takenBack = ToneShape.notes(880, 660, 495);
  private final byte[] lookAtMe = ToneShape.notes(440, 330, 440);
  private final ThreadPoolExecutor player =
      new ThreadPoolExecutor(
          0,
          1,
          5,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(2),
          SineTones::thread,
          new ThreadPoolExecutor.DiscardOldestPolicy());

  @Override
  public void taken() {
    player.execute(() -> play(taken));
  }

  @Override
  public void takenBack() {
    player.execute(() -> play(takenBack));
  }

  @Override
  public void lookAtMe() {
    player.execute(() -> play(lookAtMe));
  }

  @Override
  public void close() {
    player.shutdownNow();
  }

  private static void play(byte[] sound) {
    try (SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT)) {
      line.open(FORMAT);
      line.start();
      line.write(sound, 0, sound.length);
      line.drain();
    } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
      // A machine without sound, or whose sound is busy. The same is on the screen in words, so
      // there is nobody to tell.
      return;
    }
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "bench tones");
    thread.setDaemon(true);
    return thread;
  }
}
