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
import boreledger.station.wording.Part.Depth;
import boreledger.station.wording.Part.Length;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Part.Ratio;
import boreledger.station.wording.Part.Recorded;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a person should know before trusting or filing a ring. */
final class RingCautions {
  /** A gap that reads too wide by less than a feeler's step is not worth a word. */
  private static final double NOTICEABLE_MM = 0.002;

  private final Ring ring;
  private final Name name;

  RingCautions(Ring ring) {
    this.ring = ring;
    this.name = new Name(ring.name());
  }

  static String words(RaisedTo raisedTo) {
    return switch (raisedTo) {
      case TOP_RING -> "the top ring's target";
      case MAKERS_SMALLEST_GAP -> "the maker's smallest gap";
    };
  }

  /** Readings that do not agree with the bore and the other readings. */
  List<Statement> disagreements(List<GapAgreement> agreements) {
    List<Statement> cautions = new ArrayList<>();
    Phrase phrase = agreements.size() == 2 ? Phrase.GAP_DISAGREES_ONE_OF_TWO : Phrase.GAP_DISAGREES;
    for (GapAgreement agreement : agreements) {
      Double en = agreement.expectation().en();
      if (en != null && Math.abs(en) > 1) {
        Depth depth = new Depth(agreement.reading().depthMm());
        cautions.add(phrase.of(name, depth, new Ratio(en, 1)));
      }
    }
    return cautions;
  }

  /** Depths where the ring was not square. */
  List<Statement> tilts(List<GapResult> gaps) {
    List<Statement> cautions = new ArrayList<>();
    for (GapResult gap : gaps) {
      if (gap.correctedMm() != null && gap.measuredMm() - gap.correctedMm() > NOTICEABLE_MM) {
        cautions.add(
            Phrase.RING_TILTED.of(
                name,
                new Depth(gap.depthMm()),
                new Ratio(gap.tiltDeg(), 2),
                new Length(gap.measuredMm() - gap.correctedMm())));
      }
    }
    return cautions;
  }

  /** A ring that is filed. */
  List<Statement> of(TightestResult tightest, RingVerdict verdict, Heat heat) {
    List<Statement> cautions = new ArrayList<>(tightness(tightest));
    hot(tightest, heat).ifPresent(cautions::add);
    if (verdict.target().targetMm() < tightest.coldGapForMarginMm()) {
      cautions.add(
          Phrase.TARGET_TOO_TIGHT_HOT.of(
              name,
              new Length(verdict.target().targetMm()),
              new Length(tightest.coldGapForMarginMm()),
              new Length(heat.marginMm()),
              new Recorded(heat.origin())));
    }
    if (verdict.state() == RingState.TOO_WIDE) {
      cautions.add(
          Phrase.GAP_TOO_WIDE.of(
              name,
              new Length(verdict.widest().gapMm()),
              new Depth(verdict.widest().depthMm()),
              new Length(ring.gapMaxMm())));
    }
    fit(verdict.fit()).ifPresent(cautions::add);
    return cautions;
  }

  /** A ring that is only verified. */
  List<Statement> of(TightestResult tightest, OilRail rail, boolean boosted, Heat heat) {
    List<Statement> cautions = new ArrayList<>(tightness(tightest));
    if (tightest.hotGapMm() <= 0) {
      cautions.add(
          Phrase.RAIL_ENDS_BUTT_HOT.of(
              name, new Length(tightest.hotGapMm()), new Recorded(heat.origin())));
    }
    if (rail.state() == RingState.TOO_WIDE) {
      cautions.add(
          Phrase.RAIL_TOO_WIDE.of(
              name, new Length(rail.widest().valueMm()), new Length(ring.gapMaxMm())));
    } else if (rail.state() != RingState.READY) {
      Phrase phrase = boosted ? Phrase.RAIL_TOO_TIGHT_BOOSTED : Phrase.RAIL_TOO_TIGHT;
      cautions.add(
          phrase.of(name, new Length(tightest.gapMm()), new Length(rail.wanted().minMm())));
    }
    return cautions;
  }

  private List<Statement> tightness(TightestResult tightest) {
    List<Statement> cautions = new ArrayList<>();
    Depth depth = new Depth(tightest.depthMm());
    if (tightest.gapMm() < ring.gapMinMm()) {
      cautions.add(
          Phrase.GAP_BELOW_SMALLEST.of(
              name, new Length(tightest.gapMm()), depth, new Length(ring.gapMinMm())));
    }
    if (tightest.beyondReadings()) {
      cautions.add(
          Phrase.TIGHTEST_BEYOND_READINGS.of(name, depth, new Length(tightest.cautiousGapMm())));
    }
    return cautions;
  }

  private Optional<Statement> hot(TightestResult tightest, Heat heat) {
    Length left = new Length(tightest.hotGapMm());
    Recorded origin = new Recorded(heat.origin());
    if (tightest.hotGapMm() <= 0) {
      return Optional.of(Phrase.ENDS_BUTT_HOT.of(name, left, origin));
    } else if (tightest.hotGapMm() < heat.marginMm()) {
      return Optional.of(
          Phrase.LITTLE_LEFT_HOT.of(name, left, new Length(heat.marginMm()), origin));
    }
    return Optional.empty();
  }

  private Optional<Statement> fit(TargetFit fit) {
    if (fit instanceof TargetFit.BoreAtFault fault) {
      Phrase phrase =
          fault.evenAtMinimum() ? Phrase.BORE_AT_FAULT_EVEN_AT_SMALLEST : Phrase.BORE_AT_FAULT;
      return Optional.of(
          phrase.of(
              name,
              new Length(fault.targetMm()),
              new Length(fault.widestMm()),
              new Length(fault.maxMm())));
    } else if (fit instanceof TargetFit.TargetAboveMaximum above) {
      return Optional.of(
          Phrase.TARGET_ABOVE_LARGEST.of(
              name, new Length(above.targetMm()), new Length(above.maxMm())));
    }
    return Optional.empty();
  }
}
