package boreledger.drivers.queue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.LineFault;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sentence of the queue's description. */
class CaptureQueueTest {
  private static final Duration AT_ONCE = Duration.ZERO;
  private static final Duration LONG = Duration.ofSeconds(30);

  private final CaptureQueue queue = new CaptureQueue(2);

  private void fill() throws InterruptedException {
    assertTrue(queue.put(Items.kept("a", 1)));
    assertTrue(queue.put(Items.kept("a", 2)));
  }

  private List<QueueItem> drain() throws InterruptedException {
    List<QueueItem> items = new ArrayList<>();
    Optional<QueueItem> item = queue.poll(AT_ONCE);
    while (item.isPresent()) {
      items.add(item.get());
      item = queue.poll(AT_ONCE);
    }
    return items;
  }

  @Test
  void itemsComeOutInTheOrderTheyWentIn() throws Exception {
    CaptureQueue large = new CaptureQueue(100);
    List<QueueItem> put = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      put.add(i % 3 == 0 ? Items.live("a", i) : Items.kept("b", i));
      assertTrue(large.put(put.get(i)));
    }
    List<QueueItem> taken = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      taken.add(large.poll(AT_ONCE).orElseThrow());
    }
    assertEquals(put, taken);
  }

  @Test
  void fullQueueLetsThePutterWaitForRoom() throws Exception {
    fill();
    Background<Boolean> putter = Background.of(() -> queue.put(Items.kept("a", 3))).untilItWaits();
    assertEquals(2, queue.size());
    assertEquals(Optional.of(Items.kept("a", 1)), queue.poll(AT_ONCE));
    assertTrue(putter.result());
    assertEquals(List.of(Items.kept("a", 2), Items.kept("a", 3)), drain());
  }

  @Test
  void liveSampleIsSkippedAndCountedWhenFull() throws Exception {
    fill();
    assertTrue(queue.put(Items.live("a", 3)));
    assertEquals(1, queue.skipped());
    assertEquals(List.of(Items.kept("a", 1), Items.kept("a", 2)), drain());
  }

  @Test
  void liveSampleIsNotSkippedWhileThereIsRoom() throws Exception {
    assertTrue(queue.put(Items.live("a", 1)));
    assertEquals(0, queue.skipped());
    assertEquals(List.of(Items.live("a", 1)), drain());
  }

  @Test
  void endAndBreakAreNotSkipped() {
    assertFalse(new QueueItem.Ended("a", 1).maySkip());
    assertFalse(new QueueItem.Broke("a", 1, new LineFault("gone")).maySkip());
  }

  @Test
  void emptyQueueLetsTheTakerWaitForAnItem() throws Exception {
    Background<Optional<QueueItem>> taker = Background.of(() -> queue.poll(LONG)).untilItWaits();
    queue.put(Items.kept("a", 1));
    assertEquals(Optional.of(Items.kept("a", 1)), taker.result());
  }

  @Test
  void emptyQueueAnswersEmptyAfterTheTimeout() throws Exception {
    long before = System.nanoTime();
    assertEquals(Optional.empty(), queue.poll(Duration.ofMillis(20)));
    assertTrue(System.nanoTime() - before >= 20_000_000);
    assertEquals(Optional.empty(), queue.poll(AT_ONCE));
  }

  @Test
  void readerThatEndedLeavesWhatItPutBefore() throws Exception {
    queue.put(Items.kept("a", 1));
    queue.put(new QueueItem.Ended("a", 2));
    assertEquals(List.of(Items.kept("a", 1), new QueueItem.Ended("a", 2)), drain());
    assertFalse(queue.isClosed());
  }

  @Test
  void closingLetsGoWhoWaitsToPut() throws Exception {
    fill();
    Background<Boolean> one = Background.of(() -> queue.put(Items.kept("a", 3))).untilItWaits();
    Background<Boolean> two = Background.of(() -> queue.put(Items.kept("b", 3))).untilItWaits();
    queue.close();
    assertFalse(one.result());
    assertFalse(two.result());
  }

  @Test
  void closedQueueRefusesWhateverIsPut() throws Exception {
    queue.close();
    assertTrue(queue.isClosed());
    assertFalse(queue.put(Items.kept("a", 1)));
    assertFalse(queue.put(Items.live("a", 1)));
    assertEquals(0, queue.size());
  }

  @Test
  void closedQueueStillGivesWhatWasInIt() throws Exception {
    fill();
    queue.close();
    assertEquals(List.of(Items.kept("a", 1), Items.kept("a", 2)), drain());
  }

  @Test
  void closedAndEmptyQueueDoesNotLetTheTakerWait() throws Exception {
    Background<Optional<QueueItem>> taker = Background.of(() -> queue.poll(LONG)).untilItWaits();
    queue.close();
    assertEquals(Optional.empty(), taker.result());
    assertEquals(Optional.empty(), queue.poll(LONG));
  }

  @Test
  void closingAgainDoesNothing() throws Exception {
    fill();
    queue.close();
    queue.close();
    assertEquals(2, queue.size());
  }

  @Test
  void interruptedPutterHasNotPut() throws Exception {
    fill();
    Background<Boolean> putter = Background.of(() -> queue.put(Items.kept("a", 3))).untilItWaits();
    ExecutionException e =
        assertThrows(ExecutionException.class, () -> putter.interrupt().result());
    assertInstanceOf(InterruptedException.class, e.getCause());
    assertEquals(List.of(Items.kept("a", 1), Items.kept("a", 2)), drain());
  }

  @Test
  void interruptedTakerHasNotTaken() throws Exception {
    Background<Optional<QueueItem>> taker = Background.of(() -> queue.poll(LONG)).untilItWaits();
    ExecutionException e = assertThrows(ExecutionException.class, () -> taker.interrupt().result());
    assertInstanceOf(InterruptedException.class, e.getCause());
    queue.put(Items.kept("a", 1));
    assertEquals(List.of(Items.kept("a", 1)), drain());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1})
  void capacityBelowOneIsRefused(int capacity) {
    assertEquals(
        "capacity " + capacity + " is below 1",
        assertThrows(IllegalArgumentException.class, () -> new CaptureQueue(capacity))
            .getMessage());
  }

  /** Three gauges in a hurry, one slow taker, a capacity that divides nothing. */
  @Test
  void nothingIsLostOrReorderedBetweenThreads() throws Exception {
    int each = 20_000;
    CaptureQueue narrow = new CaptureQueue(7);
    List<String> gauges = List.of("a", "b", "c");
    List<Background<String>> putters =
        gauges.stream().map(gauge -> Background.of(() -> putAll(narrow, gauge, each))).toList();
    Map<String, MessageDigest> seen = new HashMap<>();
    for (String gauge : gauges) {
      seen.put(gauge, MessageDigest.getInstance("SHA-256"));
    }
    int most = 0;
    int ended = 0;
    while (ended < gauges.size()) {
      most = Math.max(most, narrow.size());
      QueueItem item = narrow.poll(LONG).orElseThrow();
      seen.get(item.gauge()).update(text(item));
      ended += item instanceof QueueItem.Ended ? 1 : 0;
    }
    for (int i = 0; i < gauges.size(); i++) {
      assertEquals(
          putters.get(i).result(), HexFormat.of().formatHex(seen.get(gauges.get(i)).digest()));
    }
    assertTrue(most <= 7, "held " + most);
    assertEquals(0, narrow.skipped());
  }

  private static String putAll(CaptureQueue queue, String gauge, int count) throws Exception {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    for (int i = 0; i <= count; i++) {
      QueueItem item = i < count ? Items.kept(gauge, i) : new QueueItem.Ended(gauge, i);
      assertTrue(queue.put(item));
      digest.update(text(item));
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static byte[] text(QueueItem item) {
    return item.toString().getBytes(StandardCharsets.UTF_8);
  }
}
