package boreledger.station.bench.model;

import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import java.util.Objects;

/** Puts a ring's state in each cylinder into one line. */
final class GapVerdicts {
  private final Lengths lengths;
  private final String ring;

  GapVerdicts(Lengths lengths, String ring) {
    this.lengths = lengths;
    this.ring = ring;
  }

  Verdict verdict(CylinderResults cylinder) {
    String title = Text.VERDICT_CYLINDER.with(Integer.toString(cylinder.cylinder()));
    return cylinder.rings().stream()
        .filter(each -> each.ring().equals(ring))
        .findFirst()
        .map(each -> verdict(title, each))
        .orElseGet(() -> unread(title));
  }

  private Verdict verdict(String title, RingResults results) {
    long read = results.gaps().stream().filter(each -> each.measuredMm() != null).count();
    if (read == 0) {
      return unread(title);
    }
    return switch (results.state()) {
      case "file" -> new Verdict(Verdict.Kind.LOOK, title, file(results.removeMm()));
      case "ready" -> new Verdict(Verdict.Kind.KEPT, title, Text.VERDICT_READY.with(ring));
      case "too-wide" -> new Verdict(Verdict.Kind.BEYOND, title, Text.VERDICT_TOO_WIDE.with(ring));
      default ->
          new Verdict(
              Verdict.Kind.OPEN,
              title,
              Text.VERDICT_GAP_UNKNOWN.with(
                  ring, Long.toString(read), Integer.toString(results.gaps().size())));
    };
  }

  private String file(Double removeMm) {
    return Text.VERDICT_FILE.with(ring, lengths.size(Objects.requireNonNull(removeMm)));
  }

  private Verdict unread(String title) {
    return new Verdict(Verdict.Kind.OPEN, title, Text.VERDICT_GAP_UNREAD.with(ring));
  }
}
