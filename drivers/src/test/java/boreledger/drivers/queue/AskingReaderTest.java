package boreledger.drivers.queue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.keyboard.KeyboardLine;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.profile.AskSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A reader that asks, on a clock that moves only while the line is read. */
class AskingReaderTest {
  private static final Bytes REQUEST = ascii("M\r");

  private final CaptureQueue queue = new CaptureQueue(10_000);
  private GaugeReader again;

  private static Bytes ascii(String text) {
    return Bytes.of(text.getBytes(StandardCharsets.US_ASCII));
  }

  private static AskSpec every(double ms) {
    return new AskSpec(REQUEST, ms, 1000, 0);
  }

  private static GaugeReader reader(Line line, AskSpec ask, CaptureQueue queue) throws Exception {
    GaugeProfile profile = GaugeProfiles.find("ascii-line-size", List.of());
    return new GaugeReader("gap", line, new Gauge(profile, null), queue, ask);
  }

  /** Reads to the end of the line; what the gauge said, in words. */
  private List<String> run(AnsweringLine line, AskSpec ask) throws Exception {
    reader(line, ask, queue).run();
    return said();
  }

  private List<String> said() throws InterruptedException {
    List<String> words = new ArrayList<>();
    while (queue.size() > 0) {
      QueueItem item = queue.poll(Duration.ZERO).orElseThrow();
      if (item instanceof QueueItem.Said said && said.event() instanceof GaugeEvent.Live live) {
        words.add(String.valueOf(live.sample().valueMm()));
      } else if (item instanceof QueueItem.Said said
          && said.event() instanceof GaugeEvent.Bad bad) {
        words.add(bad.rejected().why());
        assertTrue(bad.rejected().tS() > 0);
      }
    }
    return words;
  }

  private static void assertTimes(List<Double> expectedS, List<Double> foundS) {
    assertEquals(expectedS.size(), foundS.size(), foundS.toString());
    for (int i = 0; i < expectedS.size(); i++) {
      assertEquals(expectedS.get(i), foundS.get(i), 1e-6, foundS.toString());
    }
  }

  @Test
  void gaugeIsAskedAtOnceAndThenAtItsPace() throws Exception {
    AnsweringLine line =
        new AnsweringLine(0.35, (l, number) -> l.answer(0.004, ascii("0." + number + "\n")));
    assertEquals(List.of("0.1", "0.2", "0.3", "0.4"), run(line, every(100)));
    assertTimes(List.of(0.0, 0.1, 0.2, 0.3), line.askedS);
    assertEquals(REQUEST, line.requests.get(0));
  }

  @Test
  void nothingIsSentWhileAnAnswerIsStillComing() throws Exception {
    AnsweringLine line =
        new AnsweringLine(
            2,
            (l, number) -> {
              l.answer(0.1, ascii("0."));
              l.answer(0.25, ascii(number + "\n"));
            });
    run(line, every(20));
    assertTrue(line.askedS.size() >= 7, line.askedS.toString());
    assertTrue(line.waitingBytes.stream().allMatch(bytes -> bytes == 0));
    for (int i = 1; i < line.askedS.size(); i++) {
      assertTrue(line.askedS.get(i) - line.askedS.get(i - 1) >= 0.25);
    }
  }

  @Test
  void missedRequestsAreNotMadeUpFor() throws Exception {
    AnsweringLine line =
        new AnsweringLine(1.0, (l, number) -> l.answer(number == 1 ? 0.55 : 0.001, ascii("0.5\n")));
    run(line, every(100));
    assertTimes(List.of(0.0, 0.55, 0.65, 0.75, 0.85, 0.95), line.askedS);
  }

  @Test
  void noAnswerIsToldOnceUntilTheGaugeSpeaksAgain() throws Exception {
    AnsweringLine line =
        new AnsweringLine(
            5.5,
            (l, number) -> {
              if (number == 4) {
                l.answer(0.01, ascii("0.5\n"));
              }
            });
    assertEquals(
        List.of("no answer to 4d0d within 1000.0 ms", "0.5", "no answer to 4d0d within 1000.0 ms"),
        run(line, every(1000)));
    assertTimes(List.of(0.0, 1.0, 2.0, 3.0, 4.0, 5.0), line.askedS);
  }

  @Test
  void halfAnAnswerIsToldAsSuch() throws Exception {
    AnsweringLine line = new AnsweringLine(1.5, (l, number) -> l.answer(0.1, ascii("0.5")));
    assertEquals("no whole answer to 4d0d within 1000.0 ms", run(line, every(5000)).get(0));
  }

  @Test
  void gaugeThatHasGoneIsNotAskedBeforeItIsBack() throws Exception {
    AnsweringLine line = new AnsweringLine(3.9, (l, number) -> {});
    line.away(0.5, 3.5);
    assertEquals(List.of(), run(line, every(100)));
    assertTimes(List.of(0.0, 3.5), line.askedS);
  }

  @Test
  void rejectedFrameHoldsTheNextRequestBackForTheAnswerBehindIt() throws Exception {
    AnsweringLine line =
        new AnsweringLine(
            1.0,
            (l, number) -> {
              l.answer(0.01, ascii("M\n"));
              l.answer(0.3, ascii("0.5\n"));
            });
    run(line, every(100));
    assertTimes(List.of(0.0, 0.3, 0.6, 0.9), line.askedS);
  }

  @Test
  void pauseAfterTheLastByteIsKept() throws Exception {
    AnsweringLine line = new AnsweringLine(0.5, (l, number) -> l.answer(0.1, ascii("0.5\n")));
    run(line, new AskSpec(REQUEST, 100.0, 1000, 4));
    assertTimes(List.of(0.0, 0.104, 0.208, 0.312, 0.416), line.askedS);
  }

  @Test
  void triggerAsksOnceAndWithoutItNothingIsSent() throws Exception {
    AskSpec onTrigger = new AskSpec(REQUEST, null, 1000, 0);
    AnsweringLine silent = new AnsweringLine(1, (l, number) -> {});
    assertEquals(List.of(), run(silent, onTrigger));
    assertEquals(List.of(), silent.askedS);
    AnsweringLine line = new AnsweringLine(1, (l, number) -> l.answer(0.01, ascii("0.5\n")));
    GaugeReader reader = reader(line, onTrigger, queue);
    assertTrue(reader.trigger());
    assertTrue(reader.trigger());
    reader.run();
    assertEquals(List.of("0.5"), said());
    assertTimes(List.of(0.0), line.askedS);
  }

  @Test
  void triggerFromAnotherThreadReachesTheLine() throws Exception {
    AnsweringLine line = new AnsweringLine(1e9, (l, number) -> l.answer(0.01, ascii("0.5\n")));
    GaugeReader reader = reader(line, new AskSpec(REQUEST, null, 1000, 0), queue);
    Thread thread = reader.start();
    reader.trigger();
    QueueItem item = queue.poll(Duration.ofSeconds(30)).orElseThrow();
    assertTrue(item instanceof QueueItem.Said said && said.event() instanceof GaugeEvent.Live);
    queue.close();
    thread.join(30_000);
    assertFalse(thread.isAlive());
  }

  @Test
  void everyTriggerWithoutAnAnswerIsTold() throws Exception {
    AnsweringLine line =
        new AnsweringLine(
            3.5,
            (l, number) -> {
              if (number == 1) {
                again.trigger();
              }
            });
    again = reader(line, new AskSpec(REQUEST, null, 1000, 0), queue);
    again.trigger();
    again.run();
    assertEquals(2, said().size());
  }

  @Test
  void aLineThatOnlySpeaksIsNeverAskedAndGoesOn() throws Exception {
    KeyboardLine line = new KeyboardLine(ascii("\n"), () -> 0);
    GaugeReader reader = reader(line, new AskSpec(REQUEST, 100.0, 1000, 0), queue);
    line.typed("0.5");
    line.end();
    assertFalse(reader.trigger());
    reader.run();
    assertEquals(List.of("0.5"), said());
  }

  @Test
  void readerThatOnlyListensCannotBeTriggered() throws Exception {
    AnsweringLine line = new AnsweringLine(1, (l, number) -> {});
    GaugeReader reader = reader(line, null, queue);
    assertFalse(reader.trigger());
    reader.run();
    assertEquals(List.of(), line.askedS);
  }
}
