package boreledger.station.bench.gaps;

import boreledger.calc.feeler.LeafSet;
import boreledger.calc.feeler.LeafStack;
import boreledger.calc.input.ImpossibleInput;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Which leaves of the feeler set on the bench make the wanted gap. */
final class Feelers {
  private static final String KEY = "leaves";
  private static final String USUAL = "0.05 0.10 0.15 0.20 0.25 0.30 0.35 0.40 0.45 0.50";
  private static final int MOST_LEAVES = 3;
  private static final int SHOWN = 3;

  private final Memory memory;
  private final StringProperty leaves;
  private final ReadOnlyStringWrapper stacks = new ReadOnlyStringWrapper("");
  private Double wantedMm;

  Feelers(Memory memory) {
    this.memory = memory;
    leaves = new SimpleStringProperty(memory.get(KEY).orElse(USUAL));
    leaves.subscribe(typed -> compute());
  }

  /** The leaves in millimetres, as typed. */
  StringProperty leaves() {
    return leaves;
  }

  /** The stacks that come nearest, a line each, or what is wrong with the leaves. */
  ReadOnlyStringProperty stacks() {
    return stacks.getReadOnlyProperty();
  }

  /** Looks for stacks for a gap; null for none. */
  void want(Double gapMm) {
    wantedMm = gapMm;
    compute();
  }

  private void compute() {
    if (wantedMm == null) {
      stacks.set("");
      return;
    }
    try {
      List<Double> set =
          Stream.of(leaves.get().strip().replace(',', '.').split("[\\s;]+"))
              .map(Double::valueOf)
              .toList();
      stacks.set(
          new LeafSet(set)
              .stacksFor(wantedMm, MOST_LEAVES).stream()
                  .limit(SHOWN)
                  .map(Feelers::words)
                  .collect(Collectors.joining("\n")));
      memory.put(KEY, leaves.get());
    } catch (NumberFormatException e) {
      stacks.set(Text.GAPS_LEAVES_WRONG.with());
    } catch (ImpossibleInput e) {
      stacks.set(Told.recorded(e.getMessage()));
    }
  }

  private static String words(LeafStack stack) {
    return Text.GAPS_STACK.with(
        stack.leavesMm().stream()
            .map(mm -> String.format(Locale.ROOT, "%.2f", mm))
            .collect(Collectors.joining(" + ")),
        String.format(Locale.ROOT, "%.3f", stack.totalMm()),
        String.format(Locale.ROOT, "%+.3f", stack.offMm()));
  }
}
