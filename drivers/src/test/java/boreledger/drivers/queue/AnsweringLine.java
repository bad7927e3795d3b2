package boreledger.drivers.queue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;

/**
 * A line whose clock moves only while it is read, with somebody at its other end who answers
 * requests as a test tells it. It ends at a given time.
 */
final class AnsweringLine implements Line {
  /** What the other end does with a request. */
  interface Answerer {
    void asked(AnsweringLine line, int number);
  }

  private record Coming(double tS, LineEvent event) {}

  final List<Double> askedS = new ArrayList<>();
  final List<Bytes> requests = new ArrayList<>();
  final List<Integer> waitingBytes = new ArrayList<>();
  private final PriorityQueue<Coming> coming =
      new PriorityQueue<>((a, b) -> Double.compare(a.tS(), b.tS()));
  private final double endS;
  private final Answerer answerer;
  private double nowS;

  AnsweringLine(double endS, Answerer answerer) {
    this.endS = endS;
    this.answerer = answerer;
  }

  /** Lets bytes come so long after now. */
  void answer(double afterS, Bytes bytes) {
    double tS = nowS + afterS;
    coming.add(new Coming(tS, new LineEvent.Chunk(tS, bytes)));
  }

  /** Lets the line go and come back at given times. */
  void away(double goneS, double backS) {
    coming.add(new Coming(goneS, new LineEvent.Gone(goneS, "gone")));
    coming.add(new Coming(backS, new LineEvent.Back(backS, "back")));
  }

  @Override
  public String name() {
    return "answering line";
  }

  @Override
  public LineEvent read(Duration timeout) {
    if (nowS >= endS) {
      return new LineEvent.End(nowS);
    }
    double untilS = nowS + timeout.toNanos() * 1e-9;
    if (!coming.isEmpty() && coming.peek().tS() <= untilS) {
      Coming next = coming.remove();
      nowS = next.tS();
      return next.event();
    }
    nowS = untilS;
    return new LineEvent.Quiet(nowS);
  }

  @Override
  public void send(Bytes request) {
    askedS.add(nowS);
    requests.add(request);
    waitingBytes.add(coming.size());
    answerer.asked(this, askedS.size());
  }

  @Override
  public void close() {
    // Nothing is open.
  }
}
