package boreledger.station.bench.gaps;

import boreledger.calc.filing.Filing;
import boreledger.calc.filing.FilingAdvice;
import boreledger.calc.filing.FilingGoal;
import boreledger.calc.filing.FilingPass;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.Told;
import boreledger.station.results.FiledResult;
import boreledger.station.wording.LengthFormat;
import java.util.List;

/**
 * What the ledger tells of filing one ring in one cylinder, and what to do next. Gaps of passes are
 * what a person read at the bench.
 *
 * @param filed the passes that count, in the order they were noted
 * @param gaugedMm the gap at the tightest point, as gauged; null when it is not known
 * @param targetMm null for a ring that is only verified
 * @param largestMm the largest gap allowed; null for no limit
 */
record FilingPage(
    String job,
    int cylinder,
    String ring,
    List<FiledResult> filed,
    Double gaugedMm,
    Double targetMm,
    Double largestMm,
    LengthFormat lengths) {
  // Common practice, no source: what a person reads off feeler leaves, as a standard uncertainty.
  private static final double READING_UNCERTAINTY_MM = 0.006;

  /** The gap now: as last read at the file, unless it was gauged since; null when not known. */
  Double gapNowMm() {
    return lastFiled() != null && lastFiled().sinceGauged()
        ? Double.valueOf(lastFiled().afterMm())
        : gaugedMm;
  }

  /** The last pass that counts; null when there is none. */
  FiledResult lastFiled() {
    return filed.isEmpty() ? null : filed.get(filed.size() - 1);
  }

  /** Whether a pass can be noted: what the gap was before it must be known. */
  boolean canBeFiled() {
    return gapNowMm() != null;
  }

  /** The passes, a line each. */
  List<String> record() {
    return filed.stream()
        .map(
            pass ->
                (pass.sinceGauged() ? GapsText.PASS : GapsText.PASS_GAUGED_SINCE)
                    .with(
                        Integer.toString(pass.turns()),
                        shown(pass.beforeMm()),
                        shown(pass.afterMm()),
                        pass.who()))
        .toList();
  }

  /** What to do next, in words. */
  String advice() {
    Double nowMm = gapNowMm();
    if (targetMm == null || nowMm == null) {
      return targetMm == null ? GapsText.NOT_FILED.with() : GapsText.NO_GAP_YET.with();
    }
    try {
      return words(next(nowMm), shown(targetMm - nowMm));
    } catch (ImpossibleInput e) {
      return Told.recorded(e.getMessage());
    }
  }

  private FilingAdvice next(double nowMm) {
    Estimate gap =
        new Estimate(nowMm, Budget.of(Component.typeB("gap reading", READING_UNCERTAINTY_MM)));
    List<FilingPass> passes =
        filed.stream()
            .map(pass -> new FilingPass(pass.turns(), pass.beforeMm(), pass.afterMm()))
            .toList();
    return new Filing(gap, READING_UNCERTAINTY_MM, passes, FilingGoal.of(targetMm, largestMm))
        .next();
  }

  private String words(FilingAdvice next, String left) {
    if (next instanceof FilingAdvice.NextPass pass) {
      return GapsText.NEXT_PASS.with(
          left, Integer.toString(pass.turns()), shown(pass.expectedGapMm()));
    } else if (next instanceof FilingAdvice.HalfTheRemainder half) {
      return GapsText.HALF.with(left, Integer.toString(half.turns()), shown(half.expectedGapMm()));
    } else if (next instanceof FilingAdvice.OneTurnTooMuch) {
      return GapsText.ONE_TURN_TOO_MUCH.with(left);
    } else if (next instanceof FilingAdvice.NothingRemoved) {
      return GapsText.NOTHING_REMOVED.with();
    } else if (next instanceof FilingAdvice.FileALittleAndMeasure) {
      return GapsText.FILE_A_LITTLE.with(left);
    }
    return next instanceof FilingAdvice.Ready
        ? GapsText.STOP_READY.with()
        : GapsText.STOP_TOO_WIDE.with();
  }

  private String shown(double mm) {
    return lengths.length(mm, lengths.coarseDecimals());
  }
}
