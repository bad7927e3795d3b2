package boreledger.station.results;

import boreledger.calc.gapping.GapTarget.RaisedTo;
import boreledger.calc.gapping.OilRail;
import boreledger.calc.gapping.RingState;
import boreledger.calc.gapping.RingVerdict;
import boreledger.calc.gapping.TargetFit;
import boreledger.calc.ring.GapAgreement;
import boreledger.station.job.Ring;
import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TightestResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a person should know before trusting or filing a ring, in plain words. */
final class RingCautions {
  /** A gap that reads too wide by less than a feeler's step is not worth a word. */
  private static final double NOTICEABLE_MM = 0.002;

  private RingCautions() {}

  static String words(RaisedTo raisedTo) {
    return switch (raisedTo) {
      case TOP_RING -> "the top ring's target";
      case MAKERS_SMALLEST_GAP -> "the maker's smallest gap";
    };
  }

  /** Readings that do not agree with the bore and the other readings. */
  static List<String> disagreements(Ring ring, List<GapAgreement> agreements) {
    List<String> cautions = new ArrayList<>();
    String which =
        agreements.size() == 2 ? "; with two depths nothing tells which of them is wrong" : "";
    for (GapAgreement agreement : agreements) {
      Double en = agreement.expectation().en();
      if (en != null && Math.abs(en) > 1) {
        cautions.add(
            words(
                "%s ring at %.1f mm: the gap read and the gap expected differ beyond their"
                    + " uncertainty (E_n %.1f)%s. Usual causes: ring not square, feeler forced,"
                    + " wrong cylinder or ring, dirt, a gauge that moved off its setting.",
                ring.name(), agreement.reading().depthMm(), en, which));
      }
    }
    return cautions;
  }

  /** Rings that were not square. */
  static List<String> tilts(Ring ring, List<GapResult> gaps) {
    List<String> cautions = new ArrayList<>();
    for (GapResult gap : gaps) {
      if (gap.correctedMm() != null && gap.measuredMm() - gap.correctedMm() > NOTICEABLE_MM) {
        cautions.add(
            words(
                "%s ring at %.1f mm: tilted by %.2f degrees, so its gap reads %.4f mm too wide."
                    + " Square it and read again.",
                ring.name(), gap.depthMm(), gap.tiltDeg(), gap.measuredMm() - gap.correctedMm()));
      }
    }
    return cautions;
  }

  static List<String> of(Ring ring, TightestResult tightest, RingVerdict verdict, Heat heat) {
    List<String> cautions = new ArrayList<>(tightness(ring, tightest));
    hot(ring, tightest, heat).ifPresent(cautions::add);
    if (verdict.target().targetMm() < tightest.coldGapForMarginMm()) {
      cautions.add(
          words(
              "%s ring: even its target of %.4f mm leaves too little when hot; %.4f mm cold would"
                  + " leave the wanted %.4f mm (free-expansion estimate, temperatures: %s).",
              ring.name(),
              verdict.target().targetMm(),
              tightest.coldGapForMarginMm(),
              heat.marginMm(),
              heat.origin()));
    }
    if (verdict.state() == RingState.TOO_WIDE) {
      cautions.add(tooWide(ring, verdict.widest().gapMm(), verdict.widest().depthMm()));
    }
    fit(ring, verdict.fit()).ifPresent(cautions::add);
    return cautions;
  }

  static List<String> of(Ring ring, TightestResult tightest, OilRail rail, boolean boosted) {
    List<String> cautions = new ArrayList<>(tightness(ring, tightest));
    if (rail.state() == RingState.TOO_WIDE) {
      cautions.add(tooWide(ring, rail.widest().valueMm(), null));
    } else if (rail.state() != RingState.READY) {
      cautions.add(
          words(
              "%s ring: %.4f mm at the tightest point is below the %.4f mm wanted%s. An oil rail is"
                  + " verified, not filed: ask its maker.",
              ring.name(),
              tightest.gapMm(),
              rail.wanted().minMm(),
              boosted ? " under boost (upper half of the range, common practice)" : ""));
    }
    return cautions;
  }

  private static List<String> tightness(Ring ring, TightestResult tightest) {
    List<String> cautions = new ArrayList<>();
    if (tightest.gapMm() < ring.gapMinMm()) {
      cautions.add(
          words(
              "%s ring: %.4f mm at the tightest point (%.1f mm below the deck) is below the maker's"
                  + " smallest gap of %.4f mm. Too small a gap breaks rings and pistons.",
              ring.name(), tightest.gapMm(), tightest.depthMm(), ring.gapMinMm()));
    }
    if (tightest.beyondReadings()) {
      cautions.add(
          words(
              "%s ring: its tightest point, %.1f mm below the deck, lies beyond the bore readings;"
                  + " if the bore goes on as it does above, the gap there is %.4f mm. Gauge there.",
              ring.name(), tightest.depthMm(), tightest.cautiousGapMm()));
    }
    return cautions;
  }

  private static Optional<String> hot(Ring ring, TightestResult tightest, Heat heat) {
    if (tightest.hotGapMm() <= 0) {
      return Optional.of(
          words(
              "%s ring: as it is now, its ends would butt when hot (%.4f mm by a free-expansion"
                  + " estimate, temperatures: %s). Do not run it so.",
              ring.name(), tightest.hotGapMm(), heat.origin()));
    } else if (tightest.hotGapMm() < heat.marginMm()) {
      return Optional.of(
          words(
              "%s ring: as it is now, %.4f mm would be left when hot, less than the wanted %.4f mm"
                  + " (free-expansion estimate, temperatures: %s).",
              ring.name(), tightest.hotGapMm(), heat.marginMm(), heat.origin()));
    }
    return Optional.empty();
  }

  private static Optional<String> fit(Ring ring, TargetFit fit) {
    if (fit instanceof TargetFit.BoreAtFault fault) {
      return Optional.of(
          words(
              "%s ring: with %.4f mm at the tightest point it would have %.4f mm at the widest, more"
                  + " than the %.4f mm allowed%s. The bore is at fault, not the ring: no filing suits"
                  + " it.",
              ring.name(),
              fault.targetMm(),
              fault.widestMm(),
              fault.maxMm(),
              fault.evenAtMinimum() ? ", even with the maker's smallest gap" : ""));
    } else if (fit instanceof TargetFit.TargetAboveMaximum above) {
      return Optional.of(
          words(
              "%s ring: its target of %.4f mm is above the maker's largest gap of %.4f mm; the"
                  + " maker's data decide.",
              ring.name(), above.targetMm(), above.maxMm()));
    }
    return Optional.empty();
  }

  private static String tooWide(Ring ring, double gapMm, Double depthMm) {
    String where = depthMm == null ? "" : words(" (%.1f mm below the deck)", depthMm);
    return words(
        "%s ring: %.4f mm at its widest point%s is above the maker's largest gap of %.4f mm. A gap"
            + " cannot be filed smaller.",
        ring.name(), gapMm, where, ring.gapMaxMm());
  }

  private static String words(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
