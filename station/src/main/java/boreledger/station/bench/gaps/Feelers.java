package boreledger.station.bench.gaps;

import boreledger.calc.feeler.LeafSet;
import boreledger.calc.feeler.LeafStack;
import boreledger.calc.input.ImpossibleInput;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.Told;
import boreledger.station.job.DisplayUnit;
import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * Which leaves of the feeler set on the bench make the wanted gap. Leaves are typed and shown in
 * the unit that is shown.
 */
final class Feelers {
  private static final String KEY = "leaves";
  private static final String USUAL = "0.05 0.10 0.15 0.20 0.25 0.30 0.35 0.40 0.45 0.50";
  private static final int MOST_LEAVES = 3;
  private static final int SHOWN = 3;

  private final Memory memory;
  private final StringProperty leaves;
  private final ReadOnlyStringWrapper stacks = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<LengthFormat> lengths =
      new ReadOnlyObjectWrapper<>(new LengthFormat(DisplayUnit.MM));
  private LeavesText typed;
  private Double wantedMm;

  Feelers(Memory memory) {
    this.memory = memory;
    typed = LeavesText.of(memory.get(KEY).orElse(USUAL));
    leaves = new SimpleStringProperty(typed.in(unit()));
    leaves.subscribe((before, now) -> type(now));
  }

  /** The leaves as typed, in the unit that is shown unless they say their own. */
  StringProperty leaves() {
    return leaves;
  }

  /** How lengths are shown. */
  ReadOnlyObjectProperty<LengthFormat> lengths() {
    return lengths.getReadOnlyProperty();
  }

  /** The stacks that come nearest, a line each, or what is wrong with the leaves. */
  ReadOnlyStringProperty stacks() {
    return stacks.getReadOnlyProperty();
  }

  /**
   * Looks for stacks for a gap.
   *
   * @param gapMm null for none
   */
  void want(Double gapMm, LengthFormat shown) {
    wantedMm = gapMm;
    lengths.set(shown);
    leaves.set(typed.in(unit()));
    compute();
  }

  private void type(String text) {
    // What is only shown in another unit was not typed so, and keeps its own digits.
    if (!text.equals(typed.in(unit()))) {
      typed = new LeavesText(text, unit());
      compute();
    }
  }

  private void compute() {
    if (wantedMm == null) {
      stacks.set("");
      return;
    }
    Optional<List<BigDecimal>> set = typed.leavesMm();
    if (set.isEmpty()) {
      stacks.set(
          (unit() == DisplayUnit.IN ? GapsText.LEAVES_WRONG_IN : GapsText.LEAVES_WRONG).with());
      return;
    }
    try {
      stacks.set(
          new LeafSet(set.get().stream().map(BigDecimal::doubleValue).toList())
              .stacksFor(wantedMm, MOST_LEAVES).stream()
                  .limit(SHOWN)
                  .map(this::words)
                  .collect(Collectors.joining("\n")));
      memory.put(KEY, typed.remembered());
    } catch (ImpossibleInput e) {
      stacks.set(Told.recorded(e.getMessage()));
    }
  }

  private String words(LeafStack stack) {
    LengthFormat shown = lengths.get();
    return GapsText.STACK.with(
        stack.leavesMm().stream()
            .map(mm -> LeavesText.leaf(BigDecimal.valueOf(mm), unit()))
            .collect(Collectors.joining(" + ")),
        shown.number(stack.totalMm(), shown.coarseDecimals()),
        shown.symbol(),
        shown.difference(stack.offMm(), shown.coarseDecimals()));
  }

  private DisplayUnit unit() {
    return lengths.get().unit();
  }
}
