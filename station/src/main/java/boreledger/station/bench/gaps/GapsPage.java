package boreledger.station.bench.gaps;

import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.model.GapVerdicts;
import boreledger.station.bench.model.Verdict;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import boreledger.station.drawing.GapFigure;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.Ring;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TargetResult;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * What the room shows of one ring in one cylinder.
 *
 * @param verdicts of the ring in all cylinders
 * @param facts target, tightest point and what is left, a line each
 * @param agreement how each measured gap goes with its bore, a line each
 * @param choice which ring suits which bore, a line each; empty when nothing can be chosen
 * @param targetMm the wanted gap; null when there is none
 * @param supposed the hot gap under what is supposed beside that which the job leads to; empty when
 *     nothing is supposed
 */
record GapsPage(
    List<Verdict> verdicts,
    Verdict shown,
    GapFigure figure,
    List<String> facts,
    List<String> agreement,
    List<String> choice,
    List<String> cautions,
    Double targetMm,
    FilingPage filing,
    String supposed) {

  static GapsPage of(Finding finding, String ringName, int cylinder, DisplayUnit unit) {
    JobResults results = finding.results();
    DisplayUnit shownUnit = unit == null ? finding.job().displayUnit() : unit;
    LengthFormat format = new LengthFormat(shownUnit);
    GapVerdicts words = new GapVerdicts(format, ringName);
    CylinderResults shown = results.cylinders().get(cylinder - 1);
    Ring ring = finding.job().ring(ringName).orElseThrow();
    RingResults there = ring(results, ringName, cylinder);
    return new GapsPage(
        results.cylinders().stream().map(words::verdict).toList(),
        words.verdict(shown),
        GapFigure.of(there, ring, format),
        facts(there, ring, format),
        there.gaps().stream().map(gap -> agreement(gap, format)).toList(),
        choice(results, ringName, Told.with(format)),
        Told.with(format).each(there.cautions()),
        there.targetMm(),
        new FilingPage(
            finding.job().name(),
            cylinder,
            ringName,
            there.filed(),
            there.tightest() == null ? null : there.tightest().gapMm(),
            there.targetMm(),
            ring.gapMaxMm(),
            format),
        supposed(finding, there, cylinder, format));
  }

  private static RingResults ring(JobResults results, String name, int cylinder) {
    return results.cylinders().get(cylinder - 1).rings().stream()
        .filter(each -> each.ring().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static String supposed(
      Finding finding, RingResults now, int cylinder, LengthFormat format) {
    TightestResult asItIs = ring(finding.asItIs(), now.ring(), cylinder).tightest();
    if (finding.results().equals(finding.asItIs()) || now.tightest() == null || asItIs == null) {
      return "";
    }
    return GapsText.HOT_SUPPOSED.with(
        format.length(now.tightest().hotGapMm(), format.coarseDecimals()),
        format.length(asItIs.hotGapMm(), format.coarseDecimals()));
  }

  private static List<String> facts(RingResults ring, Ring kind, LengthFormat format) {
    List<String> facts = new ArrayList<>();
    if (ring.target() != null) {
      facts.add(target(ring.targetMm(), ring.target(), format));
    } else {
      facts.add(GapsText.VERIFY_ONLY.with());
    }
    facts.add(
        GapsText.MAKERS_RANGE.with(
            format.stated(kind.gapMinMm()), format.stated(kind.gapMaxMm()), format.symbol()));
    TightestResult tightest = ring.tightest();
    if (tightest != null) {
      facts.add(
          GapsText.TIGHTEST.with(
              format.length(tightest.gapMm(), tightest.expandedUncertaintyMm()),
              format.depth(tightest.depthMm()),
              format.symbol()));
      facts.add(
          GapsText.HOT.with(
              format.length(tightest.hotGapMm(), format.coarseDecimals()),
              Told.recorded(tightest.temperaturesOrigin())));
      facts.add(
          GapsText.COLD_FOR_MARGIN.with(
              format.length(tightest.coldGapForMarginMm(), format.coarseDecimals())));
    }
    if (ring.removeMm() != null && ring.removeMm() > 0) {
      facts.add(
          GapsText.REMOVE.with(
              format.length(
                  ring.removeMm(), tightest == null ? null : tightest.expandedUncertaintyMm())));
    }
    return facts;
  }

  private static String target(Double targetMm, TargetResult target, LengthFormat format) {
    String words =
        GapsText.TARGET.with(
            format.length(targetMm, format.coarseDecimals()), Told.recorded(target.origin()));
    return target.raisedTo() == null
        ? words
        : words
            + " "
            + GapsText.RAISED.with(
                format.length(target.raisedFromMm(), format.coarseDecimals()),
                Told.recorded(target.raisedTo()));
  }

  private static String agreement(GapResult gap, LengthFormat format) {
    String depth = format.depth(gap.depthMm()) + " " + format.symbol();
    if (gap.measuredMm() == null) {
      return GapsText.NOT_READ.with(depth);
    }
    String measured = format.length(gap.measuredMm(), gap.measuredUncertaintyMm());
    if (gap.en() == null) {
      return GapsText.READ.with(depth, measured);
    }
    Text agreement = Math.abs(gap.en()) <= 1 ? GapsText.AGREES : GapsText.DISAGREES;
    String line =
        agreement.with(
            depth,
            measured,
            format.length(gap.expectedMm(), format.coarseDecimals()),
            Told.with(format).figures().ratio(gap.en(), 1));
    return gap.tiltDeg() == null
        ? line
        : line
            + " "
            + GapsText.TILTED.with(
                Told.with(format).figures().ratio(gap.tiltDeg(), 1),
                format.length(gap.correctedMm(), format.coarseDecimals()));
  }

  private static List<String> choice(JobResults results, String ring, Wording wording) {
    return results.ringChoices().stream()
        .filter(each -> each.ring().equals(ring))
        .flatMap(each -> wording.each(each.choice().statements()).stream())
        .toList();
  }
}
