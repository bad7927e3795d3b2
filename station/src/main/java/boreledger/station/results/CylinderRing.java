package boreledger.station.results;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Perimeter;
import boreledger.calc.ring.GapAgreement;
import boreledger.calc.ring.GapChange;
import boreledger.calc.ring.GapReading;
import boreledger.calc.ring.GappedRing;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.results.RingResults.GapResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One ring in one cylinder as far as it was read.
 *
 * @param bore the depths where the perimeter is known; empty when there are none yet
 * @param gaps the gaps read, from the deck down; may be empty
 */
record CylinderRing(Job job, Ring ring, Optional<BoreProfile> bore, List<GapReading> gaps) {
  RingResults results() {
    List<GapResult> all = ring.depthsMm().stream().map(this::gap).toList();
    return new RingResults(ring.name(), all, null, null, null, "unknown");
  }

  /** What asks for attention in this ring's readings. */
  List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    for (GapAgreement agreement : agreements()) {
      Double en = agreement.expectation().en();
      if (en != null && Math.abs(en) > 1) {
        cautions.add(disagreement(agreement, en));
      }
    }
    return cautions;
  }

  private GapResult gap(double depthMm) {
    Optional<GapReading> read = gaps.stream().filter(gap -> gap.depthMm() == depthMm).findFirst();
    Optional<GapAgreement> agreement =
        agreements().stream().filter(each -> each.reading().depthMm() == depthMm).findFirst();
    Optional<Estimate> change = change(depthMm);
    return new GapResult(
        depthMm,
        read.map(GapReading::gapMm).orElse(null),
        change.map(Estimate::valueMm).orElse(null),
        change.map(Estimate::expandedUncertaintyMm).orElse(null),
        agreement.map(each -> each.expectation().expectedMm()).orElse(null),
        agreement.map(each -> each.expectation().en()).orElse(null),
        bore.map(profile -> profile.perimeterAt(depthMm).reach().beyondReadings()).orElse(false));
  }

  private Optional<Estimate> change(double depthMm) {
    return bore.map(
        profile -> {
          Perimeter from = profile.perimeterAt(shallowestMm());
          return new GapChange(from, profile.perimeterAt(depthMm), calcRing()).estimate();
        });
  }

  private double shallowestMm() {
    return gaps.isEmpty() ? ring.depthsMm().get(0) : gaps.get(0).depthMm();
  }

  private List<GapAgreement> agreements() {
    return bore.map(profile -> new GappedRing(profile, boreCtePerK(), calcRing(), gaps))
        .map(GappedRing::agreements)
        .orElse(List.of());
  }

  private double boreCtePerK() {
    return job.engine().bore().ctePerK();
  }

  private boreledger.calc.ring.Ring calcRing() {
    return new boreledger.calc.ring.Ring(ring.material().ctePerK(), ring.radialWallMm());
  }

  private String disagreement(GapAgreement agreement, double en) {
    String which =
        gaps.size() == 2 ? "; with two depths nothing tells which of the two is wrong" : "";
    return String.format(
        Locale.ROOT,
        "%s ring at %s mm: the gap read and the gap expected differ beyond their uncertainty"
            + " (E_n %.1f)%s. Usual causes: ring not square, feeler forced, wrong cylinder or ring,"
            + " dirt, a gauge that moved off its setting.",
        ring.name(),
        agreement.reading().depthMm(),
        en,
        which);
  }
}
