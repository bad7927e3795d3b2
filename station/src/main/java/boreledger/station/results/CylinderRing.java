package boreledger.station.results;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Perimeter;
import boreledger.calc.ring.GapAgreement;
import boreledger.calc.ring.GapChange;
import boreledger.calc.ring.GapReading;
import boreledger.calc.ring.GapTaper;
import boreledger.calc.ring.GappedRing;
import boreledger.calc.ring.RingTilt;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.job.RingMark;
import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TaperResult;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One ring in one cylinder as far as it was read.
 *
 * @param bore the depths where the perimeter is known; empty when there are none yet
 * @param gaps the gaps read, from the deck down; may be empty
 * @param tilts the ring's depths around the clock; empty unless they were read
 * @param filed the passes with the file
 */
record CylinderRing(
    Job job,
    int cylinder,
    Ring ring,
    Optional<BoreProfile> bore,
    List<GapReading> gaps,
    Optional<RingTilts> tilts,
    List<FiledResult> filed,
    RingGapping gapping) {

  RingResults results() {
    List<GapAgreement> agreements = gapped().map(GappedRing::agreements).orElse(List.of());
    List<GapResult> all =
        ring.depthsMm().stream().map(depthMm -> gap(depthMm, agreements)).toList();
    GappingResult gapped =
        gapped()
            .filter(each -> !each.gaps().isEmpty())
            .map(gapping::of)
            .orElseGet(gapping::unknown);
    RingCautions about = new RingCautions(ring);
    List<Statement> disagreements = about.disagreements(agreements);
    List<Statement> cautions = new ArrayList<>();
    if (!gaps.isEmpty()) {
      FiledPasses.caution(ring, filed).ifPresent(cautions::add);
    }
    cautions.addAll(disagreements);
    cautions.addAll(about.tilts(all));
    cautions.addAll(gapped.cautions());
    return new RingResults(
        ring.name(),
        mark(),
        all,
        gapped.tightest(),
        gapped.targetMm(),
        gapped.target(),
        gapped.removeMm(),
        gapped.state().word(),
        taperFromGaps(),
        !disagreements.isEmpty() || gapped.attention(),
        cautions,
        filed);
  }

  /** The ring in its bore; empty as long as no perimeter is known. */
  Optional<GappedRing> gapped() {
    return bore.map(profile -> new GappedRing(profile, boreCtePerK(), calcRing(), gaps));
  }

  private GapResult gap(double depthMm, List<GapAgreement> agreements) {
    Optional<GapReading> reading =
        gaps.stream().filter(gap -> gap.depthMm() == depthMm).findFirst();
    Optional<Double> read = reading.map(GapReading::gapMm);
    Optional<GapAgreement> agreement =
        agreements.stream().filter(each -> each.reading().depthMm() == depthMm).findFirst();
    Optional<Estimate> change = change(depthMm);
    Optional<RingTilt> tilt = tilts.flatMap(each -> each.at(cylinder, depthMm, boreMm(depthMm)));
    return new GapResult(
        depthMm,
        read.orElse(null),
        reading.map(CylinderRing::expandedUncertaintyMm).orElse(null),
        change.map(Estimate::valueMm).orElse(null),
        change.map(Estimate::expandedUncertaintyMm).orElse(null),
        agreement.map(each -> each.expectation().expectedMm()).orElse(null),
        agreement.map(each -> each.expectation().en()).orElse(null),
        tilt.map(RingTilt::tiltDeg).orElse(null),
        tilt.flatMap(each -> read.map(gapMm -> gapMm - each.gapErrorMm())).orElse(null),
        bore.map(profile -> profile.perimeterAt(depthMm).reach().beyondReadings()).orElse(false));
  }

  private static double expandedUncertaintyMm(GapReading reading) {
    return new Estimate(reading.gapMm(), reading.budget()).expandedUncertaintyMm();
  }

  private Optional<Estimate> change(double depthMm) {
    return bore.map(
        profile -> {
          Perimeter from = profile.perimeterAt(shallowestMm());
          return new GapChange(from, profile.perimeterAt(depthMm), calcRing()).estimate();
        });
  }

  private TaperResult taperFromGaps() {
    if (gaps.size() < 2) {
      return null;
    }
    Estimate amount =
        GapTaper.of(job.engine().nominalBoreMm(), boreCtePerK(), calcRing(), gaps).amount();
    return new TaperResult(amount.valueMm(), amount.expandedUncertaintyMm());
  }

  private double boreMm(double depthMm) {
    return bore.map(profile -> profile.perimeterAt(depthMm).lengthMm() / Math.PI)
        .orElse(job.engine().nominalBoreMm());
  }

  private double shallowestMm() {
    return gaps.isEmpty() ? ring.depthsMm().get(0) : gaps.get(0).depthMm();
  }

  private double boreCtePerK() {
    return job.engine().bore().ctePerK();
  }

  private boreledger.calc.ring.Ring calcRing() {
    return new boreledger.calc.ring.Ring(ring.material().ctePerK(), ring.radialWallMm());
  }

  /** The mark of the physical ring; null when the job gives none. */
  String mark() {
    return job.ringMarks().stream()
        .filter(mark -> mark.ring().equals(ring.name()) && mark.cylinder() == cylinder)
        .map(RingMark::mark)
        .findFirst()
        .orElse(null);
  }
}
