package boreledger.station.bench.gaps;

import boreledger.calc.filing.Filing;
import boreledger.calc.filing.FilingAdvice;
import boreledger.calc.filing.FilingGoal;
import boreledger.calc.filing.FilingPass;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * Filing one ring in passes: how many turns were filed, what the gap was before and after, and what
 * to do next. Gaps here are what the person reads at the bench, in millimetres; the ledger keeps
 * what was gauged.
 */
final class FilingBench {
  // Common practice, no source: what a person reads off feeler leaves, as a standard uncertainty.
  private static final double READING_UNCERTAINTY_MM = 0.006;

  private final Map<String, List<FilingPass>> byRing = new HashMap<>();
  private final StringProperty turns = new SimpleStringProperty("");
  private final StringProperty gapAfter = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper record = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper advice = new ReadOnlyStringWrapper("");
  private String ring = "";
  private Double measuredMm;
  private Double targetMm;
  private Double largestMm;

  /** Shows a ring in a cylinder; its gap and target are null when not known. */
  void show(String newRing, Double newMeasuredMm, Double newTargetMm, Double newLargestMm) {
    ring = newRing;
    measuredMm = newMeasuredMm;
    targetMm = newTargetMm;
    largestMm = newLargestMm;
    refresh();
  }

  /** How many turns were filed, as typed. */
  StringProperty turns() {
    return turns;
  }

  /** The gap after them, as typed. */
  StringProperty gapAfter() {
    return gapAfter;
  }

  /** The passes so far, a line each. */
  ReadOnlyStringProperty record() {
    return record.getReadOnlyProperty();
  }

  /** What to do next, in words. */
  ReadOnlyStringProperty advice() {
    return advice.getReadOnlyProperty();
  }

  /** Takes what was typed as a pass; what is wrong with it is told. */
  void addPass() {
    Double nowMm = gapNowMm();
    if (nowMm == null) {
      return;
    }
    try {
      int filed = Integer.parseInt(turns.get().strip());
      double afterMm = Double.parseDouble(gapAfter.get().strip().replace(',', '.'));
      passes().add(new FilingPass(filed, nowMm, afterMm));
      turns.set("");
      gapAfter.set("");
      refresh();
    } catch (NumberFormatException e) {
      advice.set(Text.GAPS_PASS_WRONG.with());
    } catch (ImpossibleInput e) {
      advice.set(Told.recorded(e.getMessage()));
    }
  }

  /** Takes the last pass out again. */
  void dropPass() {
    if (!passes().isEmpty()) {
      passes().remove(passes().size() - 1);
      refresh();
    }
  }

  private List<FilingPass> passes() {
    return byRing.computeIfAbsent(ring, name -> new ArrayList<>());
  }

  private Double gapNowMm() {
    List<FilingPass> passes = passes();
    if (passes.isEmpty()) {
      return measuredMm;
    }
    return passes.get(passes.size() - 1).afterMm();
  }

  private void refresh() {
    record.set(
        passes().stream()
            .map(
                pass ->
                    Text.GAPS_PASS.with(
                        Integer.toString(pass.turns()),
                        millimetres(pass.beforeMm()),
                        millimetres(pass.afterMm())))
            .collect(Collectors.joining("\n")));
    Double nowMm = gapNowMm();
    if (targetMm == null || nowMm == null) {
      advice.set(targetMm == null ? Text.GAPS_NOT_FILED.with() : Text.GAPS_NO_GAP_YET.with());
      return;
    }
    try {
      advice.set(words(next(nowMm), nowMm));
    } catch (ImpossibleInput e) {
      advice.set(Told.recorded(e.getMessage()));
    }
  }

  private FilingAdvice next(double nowMm) {
    Estimate gap =
        new Estimate(nowMm, Budget.of(Component.typeB("gap reading", READING_UNCERTAINTY_MM)));
    return new Filing(gap, READING_UNCERTAINTY_MM, passes(), FilingGoal.of(targetMm, largestMm))
        .next();
  }

  private String words(FilingAdvice next, double nowMm) {
    String left = millimetres(targetMm - nowMm);
    if (next instanceof FilingAdvice.NextPass pass) {
      return Text.GAPS_NEXT_PASS.with(
          left, Integer.toString(pass.turns()), millimetres(pass.expectedGapMm()));
    } else if (next instanceof FilingAdvice.HalfTheRemainder half) {
      return Text.GAPS_HALF.with(
          left, Integer.toString(half.turns()), millimetres(half.expectedGapMm()));
    } else if (next instanceof FilingAdvice.OneTurnTooMuch) {
      return Text.GAPS_ONE_TURN_TOO_MUCH.with(left);
    } else if (next instanceof FilingAdvice.NothingRemoved) {
      return Text.GAPS_NOTHING_REMOVED.with();
    } else if (next instanceof FilingAdvice.FileALittleAndMeasure) {
      return Text.GAPS_FILE_A_LITTLE.with(left);
    }
    return next instanceof FilingAdvice.Ready
        ? Text.GAPS_STOP_READY.with()
        : Text.GAPS_STOP_TOO_WIDE.with();
  }

  private static String millimetres(double mm) {
    return String.format(Locale.ROOT, "%.3f mm", mm);
  }
}
