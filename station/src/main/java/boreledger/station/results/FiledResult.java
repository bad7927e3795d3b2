package boreledger.station.results;

import boreledger.station.session.FiledPass;
import java.math.BigDecimal;

/**
 * A pass with the file, as a person noted it.
 *
 * @param entry its entry in the ledger
 * @param turns turns of the crank or strokes
 * @param who the person
 * @param wall when it was noted, ISO 8601
 * @param sinceGauged whether no gap of this ring was gauged in this cylinder after it
 */
public record FiledResult(
    long entry,
    int turns,
    double beforeMm,
    double afterMm,
    String who,
    String wall,
    boolean sinceGauged) {
  static FiledResult of(FiledPass stored, boolean sinceGauged) {
    return new FiledResult(
        stored.seq(),
        stored.pass().turns(),
        new BigDecimal(stored.pass().beforeMm()).doubleValue(),
        new BigDecimal(stored.pass().afterMm()).doubleValue(),
        stored.pass().who(),
        stored.pass().wall().toString(),
        sinceGauged);
  }
}
