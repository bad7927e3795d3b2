package boreledger.drivers.queue;

import boreledger.drivers.gauge.GaugeEvent;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The bounded queue between the threads that read lines and the one thread that writes the ledger.
 *
 * <ul>
 *   <li>It never holds more than its capacity.
 *   <li>Items come out in the order they went in; those of one gauge are never re-ordered.
 *   <li>Full: {@link #put} waits, so that the line is slowed. Only a {@link GaugeEvent.Live} sample
 *       is skipped instead, since it is there to be looked at and its value comes again in the
 *       reading; {@link #skipped} counts them.
 *   <li>Empty: {@link #poll} waits as long as it is told, then answers empty.
 *   <li>The reader of a line closes its side by putting {@link QueueItem.Ended} or {@link
 *       QueueItem.Broke}: what it put before is still there to be taken.
 *   <li>{@link #close}, from the taking side: whoever waits to put is let go, and whatever is put
 *       from then on is refused by answering false. Nothing is dropped silently: what was in it can
 *       still be taken, and once it is empty {@code poll} no longer waits.
 *   <li>Closing again does nothing.
 *   <li>A waiting thread that is interrupted leaves by {@link InterruptedException}, and has
 *       neither put nor taken.
 * </ul>
 *
 * <p>Any number of threads may put and take.
 */
public final class CaptureQueue {
  private final int capacity;
  private final Deque<QueueItem> items = new ArrayDeque<>();
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private boolean closed;
  private long skipped;

  /**
   * An empty queue.
   *
   * @param capacity how many items it holds at most; 1 or more
   */
  public CaptureQueue(int capacity) {
    if (capacity < 1) {
      throw new IllegalArgumentException("capacity " + capacity + " is below 1");
    }
    this.capacity = capacity;
  }

  /**
   * Puts an item in; waits while the queue is full, unless it is a live sample, which is skipped
   * then.
   *
   * @return whether the item was taken care of; false when the queue is closed
   * @throws InterruptedException if interrupted while waiting; the item is not in the queue then
   */
  public boolean put(QueueItem item) throws InterruptedException {
    lock.lockInterruptibly();
    try {
      while (!closed && items.size() >= capacity) {
        if (item.maySkip()) {
          skipped++;
          return true;
        }
        changed.await();
      }
      if (closed) {
        return false;
      }
      items.addLast(item);
      changed.signalAll();
      return true;
    } finally {
      lock.unlock();
    }
  }

  /**
   * Takes the next item out; waits for one if there is none.
   *
   * @param timeout how long to wait at most
   * @return the item; empty when none came in time, or none will come any more
   */
  public Optional<QueueItem> poll(Duration timeout) throws InterruptedException {
    long leftNs = timeout.toNanos();
    lock.lockInterruptibly();
    try {
      while (items.isEmpty() && !closed && leftNs > 0) {
        leftNs = changed.awaitNanos(leftNs);
      }
      Optional<QueueItem> item = Optional.ofNullable(items.pollFirst());
      changed.signalAll();
      return item;
    } finally {
      lock.unlock();
    }
  }

  /** How many items wait. */
  public int size() {
    lock.lock();
    try {
      return items.size();
    } finally {
      lock.unlock();
    }
  }

  /** How many live samples have been skipped so far. */
  public long skipped() {
    lock.lock();
    try {
      return skipped;
    } finally {
      lock.unlock();
    }
  }

  /** Whether whatever is put is refused. */
  public boolean isClosed() {
    lock.lock();
    try {
      return closed;
    } finally {
      lock.unlock();
    }
  }

  /** Refuses everything put from now on, and lets go whoever waits to put. */
  public void close() {
    lock.lock();
    try {
      closed = true;
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }
}
