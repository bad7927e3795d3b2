package boreledger.station.report;

import boreledger.station.results.RingResults;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.LengthFormat;

/** What is to be done about a ring, in words. */
record RingWords(LengthFormat lengths, RingResults ring) {
  /** Its kind and mark. */
  String name() {
    return ring.ring() + " ring" + (ring.mark() == null ? "" : " " + ring.mark());
  }

  long read() {
    return ring.gaps().stream().filter(gap -> gap.measuredMm() != null).count();
  }

  /** Never a bare yes or no. The gravest goes first. */
  String verdict() {
    TightestResult tightest = ring.tightest();
    if (read() == 0) {
      return "not gauged yet";
    } else if (tightest != null && tightest.hotGapMm() <= 0) {
      return "AS IT IS, ITS ENDS BUTT WHEN HOT; " + todo();
    }
    return todo();
  }

  private String todo() {
    return switch (ring.state()) {
      case "file" -> "file " + remove() + " " + lengths.symbol() + " off";
      case "ready" -> "nothing to file";
      case "too-wide" -> "TOO WIDE for the maker's largest gap";
      default -> "not known yet, " + read() + " of " + ring.gaps().size() + " depths read";
    };
  }

  /** What to file, with its uncertainty. */
  String remove() {
    return lengths.number(
        ring.removeMm(), ring.tightest() == null ? null : ring.tightest().expandedUncertaintyMm());
  }
}
