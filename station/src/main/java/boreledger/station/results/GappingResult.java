package boreledger.station.results;

import boreledger.calc.gapping.RingState;
import boreledger.station.results.RingResults.TargetResult;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.Statement;
import java.util.List;

/**
 * What is to be done about a ring's gap; null for what cannot be told.
 *
 * @param attention whether filing alone will not make it good
 */
record GappingResult(
    TightestResult tightest,
    Double targetMm,
    TargetResult target,
    Double removeMm,
    RingState state,
    boolean attention,
    List<Statement> cautions) {
  GappingResult {
    cautions = List.copyOf(cautions);
  }
}
