package boreledger.station.bench.model;

import boreledger.station.bench.model.LineHealth.State;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Told;
import boreledger.station.gauging.Ending;
import java.util.List;
import java.util.stream.Collectors;

/** Keeps watch over one session's line. Times are seconds on the bench's own clock. */
final class LineWatch {
  private final String source;
  private Double lastSampleS;
  private int refused;
  private String lastReason;
  private boolean gone;
  private Ending ending;

  /**
   * Watches a line.
   *
   * @param notes things worth telling about it; often empty
   */
  LineWatch(String source, List<String> notes) {
    String line = Told.recorded(source);
    String noted = notes.stream().map(Told::recorded).collect(Collectors.joining("; "));
    this.source = notes.isEmpty() ? line : BenchText.LINE_NOTED.with(line, noted);
  }

  void sampled(double nowS) {
    lastSampleS = nowS;
  }

  /** The line went away, or is there again. */
  void gone(boolean now) {
    gone = now;
  }

  void refused(String why) {
    refused++;
    lastReason = why;
  }

  void over(Ending how) {
    ending = how;
  }

  /** How long ago the last sample came, in seconds; 0 when none came yet. */
  double ageS(double nowS) {
    return lastSampleS == null ? 0 : nowS - lastSampleS;
  }

  LineHealth health(double nowS) {
    String reasons =
        refused == 0
            ? BenchText.LINE_REFUSED_NONE.with()
            : BenchText.LINE_REFUSED.with(Integer.toString(refused), Told.recorded(lastReason));
    return new LineHealth(state(nowS), source, words(nowS), reasons);
  }

  private State state(double nowS) {
    if (ending == Ending.LINE_BROKE) {
      return State.BROKE;
    } else if (ending != null) {
      return State.ENDED;
    } else if (gone) {
      return State.GONE;
    } else if (lastSampleS == null) {
      return State.WAITING;
    }
    return ageS(nowS) < Age.LIVE_S ? State.RECEIVING : State.QUIET;
  }

  private String words(double nowS) {
    if (ending != null) {
      return switch (ending) {
        case LINE_BROKE -> BenchText.LINE_BROKE.with();
        case LINE_ENDED -> BenchText.LINE_ENDED.with();
        case PLAN_DONE, STOPPED, LEDGER_FAILED -> BenchText.LINE_STOPPED.with();
      };
    }
    return switch (state(nowS)) {
      case GONE -> BenchText.LINE_GONE.with();
      case WAITING -> BenchText.LINE_WAITING.with();
      case RECEIVING -> BenchText.LINE_RECEIVING.with();
      default -> BenchText.LINE_QUIET.with(Age.words(ageS(nowS)));
    };
  }
}
