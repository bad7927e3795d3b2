package boreledger.station.results;

import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.Wording;
import java.util.Locale;

/** A ring's results in plain words. */
final class RingText {
  private final LengthWords lengths;
  private final Lines lines;

  /** Where lines go. */
  @FunctionalInterface
  interface Lines {
    /** Adds a line. */
    void line(String pattern, Object... values);
  }

  RingText(LengthWords lengths, Lines lines) {
    this.lengths = lengths;
    this.lines = lines;
  }

  void ring(RingResults ring) {
    lines.line(
        "  %s ring%s: %s",
        ring.ring(), ring.mark() == null ? "" : " " + ring.mark(), verdict(ring));
    lines.line(
        "    %-10s%10s%18s%12s%7s", "depth", "measured", "expected change", "expected", "E_n");
    ring.gaps().forEach(this::gap);
    if (ring.tightest() != null) {
      tightest(ring.tightest());
    }
    if (ring.target() != null) {
      lines.line("    target %s: %s", lengths.of(ring.targetMm()), ring.target().origin());
      if (ring.target().raisedTo() != null) {
        lines.line(
            "      raised from %s to %s",
            lengths.of(ring.target().raisedFromMm()), ring.target().raisedTo());
      }
    }
    if (ring.taperFromGaps() != null) {
      lines.line(
          "    taper by the gaps alone %s ± %s",
          lengths.plain(ring.taperFromGaps().amountMm()),
          lengths.of(ring.taperFromGaps().expandedUncertaintyMm()));
    }
    ring.filed().forEach(this::filed);
    Wording.PLAIN.each(ring.cautions()).forEach(caution -> lines.line("    Caution: %s", caution));
  }

  private void filed(FiledResult pass) {
    lines.line(
        "    filed %d turns: %s to %s by %s, entry %d%s",
        pass.turns(),
        lengths.plain(pass.beforeMm()),
        lengths.of(pass.afterMm()),
        pass.who(),
        pass.entry(),
        pass.sinceGauged() ? "" : ", gauged since");
  }

  private void gap(GapResult gap) {
    lines.line(
        "    %-10s%10s%18s%12s%7s%s",
        lengths.depth(gap.depthMm()),
        lengths.plain(gap.measuredMm()),
        lengths.signed(gap.expectedChangeMm()),
        lengths.plain(gap.expectedMm()),
        gap.en() == null ? "-" : String.format(Locale.ROOT, "%.1f", gap.en()),
        gap.beyondReadings() ? "  beyond the bore readings" : "");
  }

  private void tightest(TightestResult tightest) {
    lines.line(
        "    tightest %s ± %s at %s",
        lengths.plain(tightest.gapMm()),
        lengths.of(tightest.expandedUncertaintyMm()),
        lengths.depth(tightest.depthMm()));
    lines.line(
        "    hot %s at %s (free expansion; temperatures: %s)",
        lengths.of(tightest.hotGapMm()),
        lengths.depth(tightest.hotDepthMm()),
        tightest.temperaturesOrigin());
  }

  private String verdict(RingResults ring) {
    return switch (ring.state()) {
      case "file" -> "file " + lengths.of(ring.removeMm()) + " off, measuring often";
      case "ready" -> "ready; the ring maker's data decide";
      case "too-wide" -> "too wide";
      default -> "not known yet";
    };
  }
}
