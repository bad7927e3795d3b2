package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.LengthFormat;

/** Puts a ring's state in each cylinder into words. */
public final class GapVerdicts {
  private final LengthFormat lengths;
  private final String ring;

  /** Verdicts on a ring, with lengths in a unit. */
  public GapVerdicts(LengthFormat lengths, String ring) {
    this.lengths = lengths;
    this.ring = ring;
  }

  /** The ring's verdict in a cylinder. */
  public Verdict verdict(CylinderResults cylinder) {
    String title = BenchText.VERDICT_CYLINDER.with(Integer.toString(cylinder.cylinder()));
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
    } else if (closesHot(results.tightest())) {
      String words = BenchText.VERDICT_CLOSES_HOT.with();
      return new Verdict(Verdict.Kind.BEYOND, title, words, numbers(results));
    }
    return switch (results.state()) {
      case "file" -> new Verdict(Verdict.Kind.LOOK, title, file(results), numbers(results));
      case "ready" ->
          new Verdict(Verdict.Kind.KEPT, title, BenchText.VERDICT_READY.with(), numbers(results));
      case "too-wide" ->
          new Verdict(
              Verdict.Kind.BEYOND, title, BenchText.VERDICT_TOO_WIDE.with(), numbers(results));
      default -> unknown(title, read, results);
    };
  }

  /** Ends that meet when hot break rings and score bores: that goes before every other state. */
  private static boolean closesHot(TightestResult tightest) {
    Double hotGapMm = tightest == null ? null : tightest.hotGapMm();
    return hotGapMm != null && hotGapMm <= 0;
  }

  private Verdict unknown(String title, long read, RingResults results) {
    String words =
        BenchText.VERDICT_GAP_UNKNOWN.with(
            Long.toString(read), Integer.toString(results.gaps().size()));
    return new Verdict(Verdict.Kind.OPEN, title, words, numbers(results));
  }

  private String file(RingResults results) {
    return results.removeMm() == null
        ? BenchText.VERDICT_FILE.with()
        : BenchText.VERDICT_FILE_BY.with(
            lengths.length(results.removeMm(), decimals(results.tightest())));
  }

  private String numbers(RingResults results) {
    TightestResult tightest = results.tightest();
    if (tightest == null) {
      return "";
    }
    String cold =
        BenchText.VERDICT_TIGHTEST.with(
            lengths.length(tightest.gapMm(), decimals(tightest)),
            lengths.depth(tightest.depthMm()) + " " + lengths.symbol());
    return BenchText.VERDICT_TIGHTEST_HOT.with(
        cold, lengths.length(tightest.hotGapMm(), lengths.coarseDecimals()));
  }

  private int decimals(TightestResult tightest) {
    return lengths.decimals(tightest == null ? null : tightest.expandedUncertaintyMm());
  }

  private Verdict unread(String title) {
    return new Verdict(Verdict.Kind.OPEN, title, BenchText.VERDICT_GAP_UNREAD.with(), "");
  }
}
