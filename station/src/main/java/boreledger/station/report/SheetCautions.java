package boreledger.station.report;

import boreledger.station.results.BoreResults;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every caution of a job: where the numbers are they stand once, and all together at the end. */
record SheetCautions(JobResults results, LengthFormat lengths) {
  /** What holds for every job. */
  static final List<String> STANDING =
      List.of(
          "The engine and ring makers' data decide, not these figures.",
          "Too small a gap breaks rings and pistons. File less than the figure says, measure in the"
              + " bore, then file on; what is filed off cannot be put back.",
          "A ring's end is sharp and a file slips: hold the ring safely, wear gloves and eye"
              + " protection, file square and inward from the outer face, and take the burr off"
              + " (common practice, no source).",
          "Hot gaps are free-expansion estimates with the temperatures named beside them. They do"
              + " not replace the maker's smallest gap.",
          "Two axes cannot see odd lobes, nor can four: a bore can be out of round in ways that no"
              + " two-point gauge shows.",
          "Figures of tables marked as common practice have no source behind them. Take the maker's"
              + " where there are any.");

  /** What belongs to the job as a whole. */
  List<String> ofJob() {
    List<String> all = new ArrayList<>(Wording.PLAIN.each(results.cautions()));
    if (results.refused() > 0) {
      all.add(
          results.refused()
              + " samples became no reading. They are kept in the ledger; look at why they came.");
    }
    if (results.advice() != null && results.advice().largestListed()) {
      all.add(
          "The advised oversize is the largest listed: compare the remaining wall with the engine"
              + " maker's data first.");
    }
    return all;
  }

  /** What belongs to a bore. */
  List<String> of(BoreResults bore) {
    return bore.checks().stream()
        .map(check -> new CheckWords(lengths, check).caution())
        .flatMap(Optional::stream)
        .toList();
  }

  /** All that this job gives rise to, with the cylinders they belong to. */
  List<String> all() {
    List<String> all = new ArrayList<>(ofJob());
    for (CylinderResults cylinder : results.cylinders()) {
      String where = "Cylinder " + cylinder.cylinder() + ": ";
      of(cylinder.bore()).forEach(caution -> all.add(where + caution));
      for (RingResults ring : cylinder.rings()) {
        Wording.PLAIN.each(ring.cautions()).forEach(each -> all.add(where + each));
      }
    }
    return all;
  }
}
